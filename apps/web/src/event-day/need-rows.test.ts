import type { CarReadiness, Need } from '@quartermark/engine/readiness';
import { describe, expect, test } from 'vitest';
import { needRows } from './need-rows.ts';

const need = (kind: Need['kind'], title: string, more: Partial<Need> = {}): Need => ({
  id: `${kind}:${title}`,
  kind,
  subject: null,
  weight: 'blocking',
  status: 'met',
  title,
  margin: null,
  reason: '',
  evidence: [],
  remedy: null,
  accepted: null,
  mayAccept: false,
  ...more,
});

const car = (id: string, needs: Need[]): CarReadiness => ({
  car: id,
  use: 'circuit',
  event: 'e',
  verdict: { word: 'ready', by: null },
  needs,
});

const titles = (cars: CarReadiness[]) =>
  needRows(cars).map(({ group, rows }) => [group, ...rows.map(({ title }) => title)]);

describe('needRows()', () => {
  test('needRows() puts what has the same name on several cars into one row, grouped', () => {
    const cars = [
      car('a', [need('oilLevel', 'Oil level'), need('limit', 'Brake fluid'), need('here', 'Here')]),
      car('b', [need('limit', 'brake fluid'), need('oilLevel', 'Oil level')]),
    ];
    expect(titles(cars)).toEqual([
      ['car', 'Here'],
      ['wear', 'Brake fluid'],
      ['oil', 'Oil level'],
    ]);
    const [here, fluid] = needRows(cars);
    expect(Object.keys(here?.rows[0]?.needs ?? {})).toEqual(['a']);
    expect(Object.keys(fluid?.rows[0]?.needs ?? {})).toEqual(['a', 'b']);
  });

  test('needRows() loses none of two things that have the same name on one car', () => {
    const twice = [need('pads', 'Pads', { id: 'pads:1' }), need('pads', 'Pads', { id: 'pads:2' })];
    const [wheels] = needRows([car('a', twice)]);
    expect(wheels?.rows.map(({ needs }) => needs.a?.id)).toEqual(['pads:1', 'pads:2']);
    expect(new Set(wheels?.rows.map(({ key }) => key)).size).toBe(2);
  });

  test('needRows() calls a row fine only where it is on every car that is asked', () => {
    const cars = [
      car('a', [need('noise', 'Noise'), need('inspection', 'Looked over')]),
      car('b', [need('noise', 'Noise', { status: 'unknown' })]),
    ];
    const rows = needRows(cars).flatMap((group) => group.rows);
    expect(rows.map(({ title, isFine }) => [title, isFine])).toEqual([
      ['Looked over', true],
      ['Noise', false],
    ]);
  });
});
