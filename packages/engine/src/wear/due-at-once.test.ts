import { describe, expect, test } from 'vitest';
import { carBook, km, type Line } from '../../test/car-book.ts';
import { analyseBook } from '../index.ts';
import type { ItemDraft } from '../log/index.ts';

const fluid: ItemDraft & { id: string } = {
  id: 'fluid',
  name: 'Brake fluid',
  limits: [{ measure: 'months', value: 24 }],
  triggers: { incidents: ['softPedal'], oilHotterThanC: 130 },
};
const judge = (lines: readonly Line[], more: Partial<ItemDraft> = {}) => {
  const [found] = analyseBook(carBook(lines, { items: [{ ...fluid, ...more }] })).items;
  return found;
};
const soft: Line = { kind: 'incident', on: '2026-06-10', what: 'softPedal' };
const done = (more: object = {}): Line => ({
  kind: 'service',
  on: '2026-06-10',
  items: ['fluid'],
  ...more,
});

describe('overrule() by the order of the log', () => {
  test('overrule() lets the one recorded later decide where neither has a time', () => {
    expect(judge([soft, done()])?.reasonCode).toBe(null);
    expect(judge([done(), soft])?.reasonCode).toBe('trigger');
  });

  test('overrule() keeps an item due where the service cannot be told to be later', () => {
    // a service with a reading counts before what has none
    expect(judge([soft, done({ odometer: km(100) })])?.reasonCode).toBe('trigger');
    expect(judge([soft, done({ odometer: km(100), time: '18:00' })])?.reasonCode).toBe(null);
  });

  test('overrule() counts a starting point as a service', () => {
    expect(judge([soft], { baseline: { on: '2026-06-11' } })?.state).toBe('fine');
    expect(judge([soft], { baseline: { on: '2026-06-09' } })?.state).toBe('overdue');
  });

  test('overrule() names the last of several, with its day', () => {
    const again: Line = { ...soft, on: '2026-06-12', time: '09:00' };
    expect(judge([again, soft])?.trigger).toEqual({
      entry: 'e0',
      on: '2026-06-12',
      code: 'softPedal',
    });
  });

  test('overrule() compares oil temperatures in one unit', () => {
    const hot = (text: string): Line => ({
      kind: 'session',
      use: 'circuit',
      on: '2026-06-10',
      oilTempPeak: { text, unit: 'f' },
    });
    // 130 °C is 266 °F
    expect(judge([hot('266')])?.reasonCode).toBe('noBaseline');
    expect(judge([hot('267')])?.trigger?.code).toBe('oilHot');
  });

  test('overrule() waits for what lies ahead', () => {
    expect(judge([{ ...soft, on: '2026-06-16' }])?.reasonCode).toBe('noBaseline');
    expect(judge([], { dueSince: '2026-06-16' })?.reasonCode).toBe('noBaseline');
    expect(judge([], { dueSince: '2026-06-15' })?.reasonCode).toBe('asked');
  });

  test('overrule() leaves an oil change to do what a service does', () => {
    const change: Line = { kind: 'oilChange', on: '2026-06-11', filterRenewed: true };
    expect(judge([soft, change], { role: 'engineOil' })?.reasonCode).toBe(null);
    expect(judge([soft, change])?.reasonCode).toBe('trigger');
  });

  test('overrule() dates an item by what happened, not by what its limits forecast', () => {
    const at = (day: string | null) => ({ p10: day, p50: day, p90: day });
    expect(judge([done(), soft])).toMatchObject({
      dueDate: at('2026-06-10'),
      pDueWithinLead: 1,
    });
    expect(judge([done()], { once: true })?.dueDate).toEqual(at(null));
  });
});
