import { expect, test } from 'vitest';
import type { Limit } from '../log/item.ts';
import type {
  AmountLimitResult,
  CalendarLimitResult,
  Expectation,
  ItemResult,
  LimitResult,
} from '../wear/result.ts';
import { bandDays, forecastSentence, nowSentence } from './forecast-sentence.ts';

const asOf = '2026-01-10';
const km: AmountLimitResult = {
  measure: 'km',
  severe: false,
  limit: 10_000,
  known: true,
  accrued: 7_000,
  remaining: 3_000,
  fraction: 0.7,
  byClass: { road: 7_000 },
  estimated: 0,
  reachedOn: null,
};
const months: CalendarLimitResult = {
  measure: 'months',
  severe: false,
  limit: 12,
  known: true,
  elapsedDays: 253,
  remainingDays: 112,
  fraction: 0.69,
  dueDate: '2026-05-02',
};
const expects = (more: Partial<Expectation>): Expectation => ({
  measure: 'km',
  perWeek: 0,
  perOccasion: 0,
  moreLikely: 0,
  planned: 0,
  laidUpUntil: null,
  ...more,
});
const result = (limit: LimitResult, more: Partial<ItemResult>): ItemResult => ({
  id: 'oil',
  state: 'fine',
  reason: null,
  reasonCode: null,
  service: '2025-05-02',
  binding: limit.measure,
  limits: [limit],
  dueDate: { p10: '2026-05-21', p50: '2026-06-20', p90: '2026-08-03' },
  expects: expects({ measure: isAmount(limit) ? limit.measure : 'km' }),
  evidence: [],
  ...more,
});
const isAmount = (limit: LimitResult): limit is AmountLimitResult => 'accrued' in limit;
const inUnit = (value: number, unit: 'km' | 'mi') => {
  const limits: Limit[] = [{ measure: 'km', value, unit }];
  return { unit: 'km' as const, asOf, item: { name: 'Engine oil', limits } };
};
const about = inUnit(10_000, 'km');
const said = (limit: LimitResult, more: Partial<ItemResult> = {}) =>
  forecastSentence(result(limit, more), about);
const REACHED = 'half the time you reach the limit by 20 June, one time in ten by 21 May.';

test('forecastSentence() tells average week, lay-up, events and when that reaches the limit', () => {
  const all = expects({
    perWeek: 118.7,
    laidUpUntil: '2026-03-25',
    planned: 2,
    moreLikely: 1.38,
    perOccasion: 160,
  });
  expect(said(km, { expects: all })).toBe(
    `About 120 km in an average week at this time of year (recent weeks weigh most), laid up until 25 March, 2 events planned and about 1.4 more likely; ${REACHED}`,
  );
});

test('forecastSentence() does not take an assumed end of a lay-up for one that was said', () => {
  const some = result(km, { expects: expects({ laidUpUntil: '2026-04-14' }) });
  expect(forecastSentence(some, { ...about, openLayUp: true })).toBe(
    `Laid up, taken to last until 14 April; ${REACHED}`,
  );
});

test('forecastSentence() leaves out what is nothing', () => {
  expect(said(km, { expects: expects({ perWeek: 41 }) })).toBe(
    `About 41 km in an average week at this time of year (recent weeks weigh most); ${REACHED}`,
  );
  expect(said(km, { expects: expects({ perWeek: 0.02, planned: 1, moreLikely: 0.04 }) })).toBe(
    `1 event planned; ${REACHED}`,
  );
  expect(said(km, { expects: expects({ laidUpUntil: '2027-03-25' }) })).toBe(
    `Laid up until 25 March 2027; ${REACHED}`,
  );
  expect(said(km)).toBe(`No use is expected by what is recorded; ${REACHED}`);
});

test.each([
  ['sessions', 4, '4 sessions'],
  ['launches', 6, '6 launches'],
  ['hours', 1.6, '1.6 h'],
] as const)('forecastSentence() says what an outing counts in %s', (measure, perOccasion, each) => {
  const limit = { ...km, measure, limit: 18, accrued: 10, remaining: 8 };
  const some = expects({ measure, perOccasion, moreLikely: 2 });
  expect(said(limit, { expects: some })).toBe(
    `About 2 outings likely, of some ${each} each; ${REACHED}`,
  );
  expect(said(limit, { expects: { ...some, planned: 3 } })).toBe(
    `3 events planned and about 2 more likely, of some ${each} each; ${REACHED}`,
  );
});

test('forecastSentence() speaks in the unit the limit was typed in', () => {
  const some = result(km, { expects: expects({ perWeek: 160.9344 }) });
  expect(forecastSentence(some, inUnit(7_500, 'mi'))).toMatch(/^About 100 mi in an average week/);
});

test.each([
  [
    { p10: '2028-09-03', p50: null },
    'one time in ten you reach the limit by 3 September 2028, mostly not before January 2029.',
  ],
  [{ p10: null, p50: null }, 'hardly any chance that you reach the limit before January 2029.'],
  [{ p10: '2026-06-20', p50: '2026-06-20' }, 'half the time you reach the limit by 20 June.'],
  [
    { p10: asOf, p50: '2026-06-20' },
    'half the time you reach the limit by 20 June, one time in ten by now.',
  ],
  [{ p10: asOf, p50: asOf }, 'more likely than not you have reached the limit by now.'],
])('forecastSentence() ends %o as it is', (days, end) => {
  const words = said(km, { dueDate: { p90: null, ...days }, expects: expects({ perWeek: 5 }) });
  expect(words?.split('; ')[1]).toBe(end);
});

test('forecastSentence() says a day of the calendar as sure, and what could come before it', () => {
  const day = { p10: '2026-05-02', p50: '2026-05-02', p90: '2026-05-02' };
  const sure = { expects: null, dueDate: day };
  expect(said(months, sure)).toBe('12 months are up on 2 May 2026, whatever is driven.');
  expect(said({ ...months, limit: 1 }, sure)).toBe(
    '1 month is up on 2 May 2026, whatever is driven.',
  );
  expect(said({ ...months, measure: 'date', limit: '2026-05-02' }, sure)).toBe(
    'The label says 2 May 2026, whatever is driven.',
  );
  expect(said(months, { expects: null, dueDate: { ...day, p10: '2026-04-11' } })).toBe(
    '12 months are up on 2 May 2026, whatever is driven. One time in ten another limit comes before it, by 11 April.',
  );
});

test('forecastSentence() says that a limit is one for hard use, and no day before it applies', () => {
  const hard = { ...km, severe: true };
  const first = { binding: 'km:severe', expects: expects({ perWeek: 80 }) };
  expect(said(hard, first)).toMatch(/half the time you reach the limit for hard use by 20 June/);
  expect(said({ ...months, severe: true }, { binding: 'months:severe', expects: null })).toBe(
    'The schedule for hard use ends before anything else, once it applies; half the time you reach its limit by 20 June, one time in ten by 21 May.',
  );
});

test('forecastSentence() is silent where there is nothing to be forecast', () => {
  const { dueDate: _, ...none } = result(km, {});
  expect(forecastSentence(none, about)).toBeNull();
  expect(said(km, { state: 'overdue' })).toBeNull();
  expect(said(km, { reasonCode: 'lowerBound', state: 'unknown' })).toBeNull();
  expect(said(km, { reasonCode: 'doneOnce' })).toBeNull();
});

test('bandDays() names the three days, and the end of the forecast where one lies beyond it', () => {
  const days = { p10: '2026-05-21', p50: '2026-06-20', p90: '2026-08-03' };
  const said = (due: Parameters<typeof bandDays>[0]) =>
    bandDays(due, about).map(({ words, day }) => `${words} ${day}`);
  expect(said(days)).toEqual([
    'Likely by 20 June',
    'Could be as early as 21 May',
    'Nine times in ten by 3 August',
  ]);
  expect(said({ ...days, p50: null, p90: null })).toEqual([
    'Likely by not before January 2029',
    'Could be as early as 21 May',
    'Nine times in ten by not before January 2029',
  ]);
  expect(said({ ...days, p10: asOf })[1]).toBe('Could be as early as today');
});

test('bandDays() is empty where the days say no more than the state', () => {
  const one = '2026-05-02';
  expect(bandDays({ p10: one, p50: one, p90: one }, about)).toEqual([]);
  expect(bandDays({ p10: null, p50: null, p90: null }, about)).toEqual([]);
});

test('nowSentence() says what is expected since the last reading, where it makes a difference', () => {
  expect(nowSentence({ ...km, accrued: 8_120, accruedNow: 8_401.7 }, about)).toBe(
    '8,120 km by the last reading, about 8,400 km by now.',
  );
  expect(nowSentence({ ...km, accruedNow: 7_049 }, about)).toBeNull();
  expect(nowSentence(km, about)).toBeNull();
  expect(nowSentence(months, about)).toBeNull();
});
