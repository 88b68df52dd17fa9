import { expect, test } from 'vitest';
import type { Limit } from '../log/item.ts';
import type {
  AmountLimitResult,
  CalendarLimitResult,
  ItemResult,
  LimitResult,
} from '../wear/result.ts';
import { itemWords } from './item-words.ts';
import { laneItem } from './lane-item.ts';

const amount = (more: Partial<AmountLimitResult>): AmountLimitResult => ({
  measure: 'km',
  severe: false,
  limit: 10_000,
  known: true,
  accrued: 7_700,
  remaining: 2_300,
  fraction: 0.77,
  byClass: {},
  estimated: 0,
  reachedOn: null,
  ...more,
});
const calendar = (more: Partial<CalendarLimitResult>): CalendarLimitResult => ({
  measure: 'months',
  severe: false,
  limit: 12,
  known: true,
  elapsedDays: 300,
  remainingDays: 65,
  fraction: 0.82,
  dueDate: '2026-08-05',
  ...more,
});
const result = (state: ItemResult['state'], limits: LimitResult[], more = {}): ItemResult => ({
  id: 'x',
  state,
  reason: null,
  reasonCode: null,
  binding: null,
  limits,
  evidence: [],
  ...more,
});
const typed = (...limits: Limit[]) => ({ name: 'Engine oil', limits });
const inKm = typed({ measure: 'km', value: 10_000, unit: 'km' });
const on = { unit: 'km', laidUp: false, asOf: '2026-06-01' } as const;
const words = (item: ItemResult, laidUp = false) => {
  const { word, detail } = itemWords(item, inKm, { ...on, laidUp });
  return `${word} | ${detail}`;
};

test('itemWords() says what is left, without a date as long as there is none', () => {
  expect(words(result(null, [amount({})]))).toBe(
    '2,300 km left, no date yet | 7,700 km of 10,000 km used',
  );
});

test('itemWords() names the day of a calendar limit that is far off, once', () => {
  expect(words(result(null, [calendar({})]))).toBe(
    '5 August 2026 at the latest | 12 months are up then',
  );
  const day = calendar({ measure: 'days', limit: 1 });
  expect(words(result(null, [day]))).toBe('5 August 2026 at the latest | 1 day is up then');
  const label = calendar({ measure: 'date', limit: '2026-08-05' });
  expect(words(result(null, [label]))).toBe('5 August 2026 at the latest | by its label');
});

test('itemWords() says on which day the months passed', () => {
  const passed = calendar({ remainingDays: -30, fraction: 1.08, dueDate: '2026-05-02' });
  expect(words(result('overdue', [amount({}), passed]))).toBe(
    'Overdue | 12 months passed on 2 May 2026',
  );
});

test('itemWords() says on which day an amount was reached, and by how much it is over', () => {
  const over = { accrued: 10_350, remaining: -350, fraction: 1.035, reachedOn: '2026-06-03' };
  expect(words(result('overdue', [amount(over)]))).toBe(
    'Overdue | 10,000 km reached on 3 June 2026, 350 km over',
  );
  const exact = { accrued: 10_000, remaining: 0, fraction: 1, reachedOn: '2026-06-03' };
  expect(words(result('overdue', [amount(exact)]))).toBe(
    'Overdue | 10,000 km reached on 3 June 2026',
  );
});

test('itemWords() speaks of the limit that is over, not of one that is only further used', () => {
  const lastDay = calendar({ remainingDays: 0, fraction: 1, dueDate: '2026-06-01' });
  const reached = amount({ accrued: 10_000, remaining: 0, fraction: 1, reachedOn: '2026-06-01' });
  expect(words(result('overdue', [lastDay, reached]))).toMatch(/10,000 km reached/);
});

test('itemWords() speaks of the day where an item is due soon, though more of an amount is used', () => {
  const soon = calendar({ remainingDays: 12, fraction: 0.967, dueDate: '2026-06-13' });
  expect(words(result('dueSoon', [amount({ fraction: 0.99 }), soon]))).toBe(
    'Due soon | 12 months are up on 13 June 2026',
  );
  const month = calendar({ limit: 1, remainingDays: 12, dueDate: '2026-06-13' });
  expect(words(result('dueSoon', [month]))).toBe('Due soon | 1 month is up on 13 June 2026');
});

test('itemWords() tells nothing on record from an incomplete history', () => {
  const none = result('unknown', [], { reasonCode: 'noBaseline' });
  expect(words(none)).toBe('Not on record | say when it was last done');
  const least = amount({ known: false, accrued: 8_000, remaining: 2_000, fraction: 0.8 });
  const incomplete = result('unknown', [calendar({ fraction: 0.9 }), least], {
    reasonCode: 'lowerBound',
  });
  expect(words(incomplete)).toBe('At least 8,000 km | history incomplete; the limit is 10,000 km');
});

test('itemWords() never calls an item of a laid-up car overdue or due soon', () => {
  const passed = result('overdue', [calendar({ remainingDays: -1, dueDate: '2026-05-31' })]);
  expect(words(passed, true)).toBe('Before it wakes | 12 months passed on 31 May 2026');
  const soon = result('dueSoon', [calendar({ remainingDays: 3, dueDate: '2026-06-04' })]);
  expect(words(soon, true)).toBe('Before it wakes | 12 months are up on 4 June 2026');
});

test('itemWords() says a label by its own date', () => {
  const label = { measure: 'date', limit: '2026-05-31', dueDate: '2026-05-31' } as const;
  expect(words(result('overdue', [calendar({ ...label, remainingDays: -1 })]))).toBe(
    'Overdue | the date on the label, 31 May 2026, has passed',
  );
  expect(words(result('dueSoon', [calendar({ ...label, remainingDays: 4 })]))).toBe(
    'Due soon | the label says 31 May 2026',
  );
});

test('itemWords() says a distance in the unit its limit was typed in', () => {
  const inMiles = typed({ measure: 'km', value: 7_500, unit: 'mi' });
  const left = amount({ limit: 12_070.08, accrued: 10_460.736, remaining: 1_609.344 });
  expect(itemWords(result(null, [left]), inMiles, on).word).toBe('1,000 mi left, no date yet');
});

test.each([
  ['sessions', 12, '12 sessions left, no date yet'],
  ['sessions', 1, '1 session left, no date yet'],
  ['sessions', 3.7, '3.7 sessions left, no date yet'],
  ['launches', 40, '40 launches left, no date yet'],
  ['hours', 2.25, '2.3 h left, no date yet'],
] as const)('itemWords() writes %s %d as "%s"', (measure, remaining, word) => {
  const limit = amount({ measure, limit: 50, accrued: 50 - remaining, remaining });
  expect(itemWords(result(null, [limit]), undefined, on).word).toBe(word);
});

test('itemWords() passes over hard-use limits until hard use switched them on', () => {
  const severe = { active: false, severeAmount: 0, threshold: 1, since: null };
  const hard = amount({ severe: true, limit: 8_000, remaining: 300, fraction: 0.96 });
  const off = result(null, [amount({}), hard], { severe });
  expect(words(off)).toMatch(/^2,300 km left/);
  const on = result(null, [amount({}), hard], { severe: { ...severe, active: true } });
  expect(words(on)).toMatch(/^300 km left/);
  expect(laneItem(on, inKm).binding).toBe('km:severe');
});

test('itemWords() has words even where no limit could be judged', () => {
  for (const state of ['overdue', 'dueSoon', 'unknown', 'fine', null] as const)
    expect(itemWords(result(state, []), undefined, on).word).not.toBe('');
});

const days = (p50: string | null, p10: string | null = p50, p90: string | null = p50) => ({
  dueDate: { p10, p50, p90 },
});
const told = (state: ItemResult['state'], limits: LimitResult[], more: object, laidUp = false) =>
  words(result(state, limits, { binding: 'km', ...more }), laidUp);

test('itemWords() says the likely day and the early one of what is due soon, with the day of the week', () => {
  expect(told('dueSoon', [amount({})], days('2026-06-20', '2026-06-11'))).toBe(
    'Due soon | likely by Sat 20 June, could be as early as 11 June; 2,300 km left',
  );
  expect(told('dueSoon', [amount({})], days('2026-06-20'))).toBe(
    'Due soon | likely by Sat 20 June; 2,300 km left',
  );
});

test('itemWords() does not call a day of today or before one to come', () => {
  expect(told('dueSoon', [amount({})], days('2026-06-20', '2026-06-01'))).toBe(
    'Due soon | likely by Sat 20 June, could be due by now; 2,300 km left',
  );
});

test('itemWords() says the likely day of what is in limits, with its year once that is another', () => {
  expect(told('fine', [amount({})], days('2026-10-03', '2026-08-30'))).toBe(
    'In limits | likely by 3 October; 2,300 km left',
  );
  expect(told('fine', [amount({})], days('2027-01-03', '2026-11-30'))).toBe(
    'In limits | likely by 3 January 2027; 2,300 km left',
  );
});

test('itemWords() says how far the forecast looks where it finds no day', () => {
  expect(told('fine', [amount({})], days(null))).toBe(
    'In limits | nothing before June 2029; 2,300 km left',
  );
  expect(told('fine', [amount({})], days(null, '2028-12-01'))).toBe(
    'In limits | nothing likely before June 2029; 2,300 km left',
  );
  const far = calendar({ limit: 120, dueDate: '2034-05-02' });
  expect(told('fine', [far], { ...days(null), binding: 'months' })).toBe(
    'In limits | 120 months are up on 2 May 2034',
  );
});

test('itemWords() asks for a reading where the limit is more likely passed than not', () => {
  const more = { ...days('2026-06-01'), probablyOverdue: true };
  const passed = amount({ due: more.dueDate });
  expect(told('dueSoon', [passed], more)).toBe(
    'Due soon, reading needed | more likely than not past its limit by now: read the odometer',
  );
  expect(told('dueSoon', [passed], more, true)).toMatch(/^Before it wakes, reading needed/);
});

test('itemWords() asks for no reading on the last day of twelve months', () => {
  const more = { ...days('2026-06-01'), binding: 'months', probablyOverdue: true };
  const lastDay = calendar({ dueDate: '2026-06-01', remainingDays: 0, due: more.dueDate });
  expect(told('dueSoon', [lastDay, amount({ due: days('2026-10-03').dueDate })], more)).toBe(
    'Due soon | 12 months are up on 1 June 2026',
  );
});

test('itemWords() speaks of what the forecast says runs out first, not of what is used the furthest', () => {
  const most = amount({ measure: 'sessions', limit: 10, accrued: 9, remaining: 1, fraction: 0.9 });
  expect(told('fine', [most, amount({})], days('2026-10-03'))).toMatch(/2,300 km left$/);
  expect(told('fine', [most, amount({})], { ...days('2026-10-03'), binding: 'sessions' })).toMatch(
    /1 session left$/,
  );
});

test('itemWords() says a day of the calendar as sure, and what else could come before it', () => {
  const day = calendar({ dueDate: '2026-06-13', remainingDays: 12 });
  const months = { binding: 'months' };
  expect(told('dueSoon', [amount({}), day], { ...days('2026-06-13'), ...months })).toBe(
    'Due soon | 12 months are up on 13 June 2026',
  );
  expect(
    told('dueSoon', [amount({}), day], { ...days('2026-06-13', '2026-06-10'), ...months }),
  ).toBe('Due soon | 12 months are up on 13 June 2026, could be as early as 10 June');
});

test('itemWords() says no sure day for a schedule of hard use that is not in force yet', () => {
  const hard = calendar({ severe: true, limit: 6, dueDate: '2026-06-13' });
  const more = { ...days('2026-07-20', '2026-06-20'), binding: 'months:severe' };
  expect(told('dueSoon', [amount({}), hard], more)).toBe(
    'Due soon | likely by Mon 20 July, could be as early as 20 June; by the schedule for hard use',
  );
});

test('itemWords() says the most that can be left where the history is incomplete', () => {
  expect(told('dueSoon', [amount({ known: false })], days('2026-06-20'))).toBe(
    'Due soon | likely by Sat 20 June; at most 2,300 km left, history incomplete',
  );
});

test('laneItem() holds the days of a forecast, but not for what is overdue or not known', () => {
  const forecast = { binding: 'km', ...days('2026-10-03', '2026-08-30') };
  expect(laneItem(result('fine', [amount({})], forecast), inKm)).toMatchObject({
    likely: '2026-10-03',
    early: '2026-08-30',
  });
  for (const state of ['overdue', 'unknown'] as const)
    expect(laneItem(result(state, [amount({})], forecast), inKm)).not.toHaveProperty('likely');
});
