import { describe, expect, it } from 'vitest';
import {
  carCase,
  exchange,
  item,
  km,
  reading,
  service,
  startingPoint,
  use,
} from '../../test/car-case.ts';
import type { CarCase, CaseEntry, CaseItem } from '../history/case.ts';
import { analyseCase } from './analyse-case.ts';
import { type AmountLimitResult, type ItemResult, isAmountLimit } from './result.ts';

const AS_OF = '2026-06-30';
const SESSIONS = { measure: 'sessions', value: 10, weights: {} } as const;
const HOURS = { measure: 'hours', value: 50, weights: {} } as const;

function first(car: CarCase): ItemResult {
  const found = analyseCase(car).items[0];
  if (found === undefined) throw new Error('the item is missing');
  return found;
}

const judge = (one: CaseItem, ...entries: CaseEntry[]) => first(carCase(AS_OF, entries, [one]));

function amount(found: ItemResult, measure = 'km'): AmountLimitResult {
  const limit = found.limits.find((one) => one.measure === measure);
  if (limit === undefined || !isAmountLimit(limit)) throw new Error(`no limit in ${measure}`);
  return limit;
}

const done = service('2026-01-01', ['oil'], { odo: 10_000, id: 'done' });

describe('analyseCase() where something is not known', () => {
  it('has nothing to say of an item that was never done', () => {
    expect(judge(item('gear', [km(40_000)]), done)).toEqual({
      id: 'gear',
      state: 'unknown',
      reason: 'Nothing on record says when this was last done.',
      reasonCode: 'noBaseline',
      binding: null,
      limits: [],
      dueDate: { p10: null, p50: null, p90: null },
      evidence: [],
    });
  });

  it('knows only a lower bound after a service before the first reading', () => {
    const found = judge(
      item('oil', [km(10_000), { measure: 'months', value: 24 }]),
      service('2025-12-01', ['oil'], {}),
      reading('2026-01-01', 10_000),
      reading('2026-02-01', 10_400),
    );
    expect(found).toMatchObject({ state: 'unknown', reasonCode: 'lowerBound' });
    expect(amount(found)).toMatchObject({ accrued: 400, known: false });
  });

  it('knows it all where the service says that the history since is complete', () => {
    const found = judge(
      item('oil', [km(10_000)]),
      service('2025-12-01', ['oil'], { complete: true }),
      reading('2026-01-01', 10_000),
    );
    expect(amount(found).known).toBe(true);
  });

  it('knows only a lower bound across an exchange without its old value, complete or not', () => {
    const found = judge(
      item('oil', [km(10_000), SESSIONS]),
      service('2026-01-01', ['oil'], { odo: 88_000, complete: true }),
      exchange('2026-02-01', 0),
      reading('2026-03-01', 500),
    );
    expect(amount(found)).toMatchObject({ accrued: 500, known: false });
    expect(amount(found, 'sessions').known).toBe(true);
    expect(found.reasonCode).toBe('lowerBound');
  });

  it('knows it all again once the item was done after the exchange', () => {
    const found = judge(
      item('oil', [km(10_000)]),
      reading('2026-01-01', 88_000),
      exchange('2026-02-01', 0),
      service('2026-02-02', ['oil'], { odo: 10 }),
      reading('2026-03-01', 500),
    );
    expect(amount(found)).toMatchObject({ accrued: 490, known: true });
  });

  it('knows it all where the service itself reads the new instrument first', () => {
    const found = judge(
      item('oil', [km(10_000)]),
      reading('2026-01-01', 88_000),
      service('2026-02-02', ['oil'], { odo: 10 }),
      reading('2026-03-01', 500),
    );
    expect(amount(found)).toMatchObject({ accrued: 490, known: true });
  });

  it('knows only a lower bound across an exchange that nobody logged', () => {
    const found = judge(
      item('oil', [km(10_000)]),
      service('2026-01-01', ['oil'], { odo: 88_000 }),
      reading('2026-02-02', 10),
      reading('2026-03-01', 500),
    );
    expect(amount(found)).toMatchObject({ accrued: 490, known: false });
  });

  it('knows the hours of a car without an hour meter only as well as its odometer', () => {
    const found = judge(
      item('pump', [HOURS]),
      service('2026-01-01', ['pump'], { odo: 88_000 }),
      exchange('2026-02-01', 0),
    );
    expect(amount(found, 'hours').known).toBe(false);
  });

  it('knows sessions only from the first entry of the log on', () => {
    const starts = (baseline: NonNullable<CaseItem['baseline']>) =>
      judge(item('fluid', [SESSIONS], { baseline }), use('2026-02-01', 'circuit', { sessions: 4 }));
    expect(starts(startingPoint('2024-02-01'))).toMatchObject({
      reasonCode: 'lowerBound',
      limits: [{ accrued: 4, known: false }],
    });
    expect(starts(startingPoint('2024-02-01', null, true)).limits).toMatchObject([{ known: true }]);
    expect(starts(startingPoint('2026-03-01')).limits).toMatchObject([{ accrued: 0, known: true }]);
  });

  it('is overdue though only a lower bound is known', () => {
    const found = judge(
      item('oil', [km(300)]),
      service('2025-12-01', ['oil'], {}),
      reading('2026-01-01', 10_000),
      reading('2026-02-01', 10_400),
    );
    expect(found).toMatchObject({ state: 'overdue', reasonCode: null });
  });

  it('is due soon by the calendar though only a lower bound is known', () => {
    const found = judge(
      item('oil', [km(10_000), { measure: 'months', value: 7 }]),
      service('2025-12-01', ['oil'], {}),
      reading('2026-01-01', 10_000),
    );
    expect(found.state).toBe('dueSoon');
  });

  it('never lets a hard-use switch that cannot be judged count as good', () => {
    const found = judge(
      item('fluid', [{ measure: 'months', value: 24 }, SESSIONS], {
        severe: {
          classes: ['circuit'],
          measure: 'sessions',
          share: 0.5,
          basis: 'limit',
          limits: [km(1000)],
        },
      }),
      use('2025-12-01', 'circuit', { sessions: 1 }),
      service('2026-01-01', ['fluid'], {}),
      reading('2026-02-01', 10_000),
    );
    expect(found).toMatchObject({ state: 'unknown', reasonCode: 'lowerBound' });
  });
});
