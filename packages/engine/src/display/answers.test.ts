import { expect, test } from 'vitest';
import { noOilYet } from '../../test/no-oil-yet.ts';
import { nothingOpen } from '../../test/nothing-open.ts';
import type { ItemInput, Limit } from '../log/item.ts';
import type { Analysis, FlagCode, ItemResult, LimitResult } from '../wear/result.ts';
import { carAnswer, firstItem } from './car-answer.ts';
import { flagSentence } from './flag-sentence.ts';
import { garageAnswer } from './garage-answer.ts';
import { type GarageRow, needsAHand } from './garage-row.ts';
import type { Lane } from './lane.ts';
import { laneItem } from './lane-item.ts';
import { whySentence } from './why-sentence.ts';

function sessions(remaining: number, more = {}): LimitResult {
  const accrued = 16 - remaining;
  return {
    measure: 'sessions',
    severe: false,
    limit: 16,
    known: true,
    accrued,
    remaining,
    fraction: accrued / 16,
    byClass: { circuit: accrued },
    estimated: 0,
    reachedOn: null,
    ...more,
  };
}

function months(remainingDays: number, dueDate: string): LimitResult {
  const fraction = 1 - remainingDays / 365;
  const elapsedDays = 365 - remainingDays;
  return {
    measure: 'months',
    severe: false,
    limit: 12,
    known: true,
    elapsedDays,
    remainingDays,
    fraction,
    dueDate,
  };
}

function item(
  id: string,
  state: ItemResult['state'],
  limits: LimitResult[],
  more = {},
): ItemResult {
  return {
    id,
    state,
    reason: null,
    reasonCode: null,
    binding: null,
    limits,
    evidence: [],
    ...more,
  };
}

const analysis = (items: ItemResult[], laidUp: Analysis['laidUp'] = null): Analysis => ({
  schema: 1,
  engineVersion: 1,
  car: 'c',
  asOf: '2026-06-01',
  flags: [],
  items,
  laidUp,
  odometer: null,
  lastLevel: null,
  oil: noOilYet(),
  ...nothingOpen,
});

/** Items are called by their ids. */
const said = (items: ItemResult[], laidUp: Analysis['laidUp'] = null) =>
  carAnswer(analysis(items, laidUp), {
    unit: 'km',
    items: items.map(({ id }) => ({ id, item: { name: id, limits: [] } })),
  });

const oil = item('engine oil', 'overdue', [months(-30, '2026-05-02')]);
const fluid = item('brake fluid', null, [sessions(12)]);
const noBaseline = { reasonCode: 'noBaseline' };

test('carAnswer() says what has run out and what is left, in words', () => {
  expect(said([fluid, oil])).toBe(
    'Engine oil is overdue: 12 months passed on 2 May 2026. Brake fluid has 12 sessions left, no date yet.',
  );
});

test('carAnswer() says what is due soon, and speaks of several things as such', () => {
  const pads = item('front pads', 'dueSoon', [months(10, '2026-06-11')]);
  expect(said([pads])).toBe('Front pads are due soon: 12 months are up on 11 June 2026.');
});

test('carAnswer() counts what goes beyond three', () => {
  const many = ['a', 'b', 'c', 'd'].map((id) => item(id, 'overdue', oil.limits));
  expect(said(many)).toMatch(/^A is overdue: .* B is overdue: .* Two more are overdue\.$/);
});

test('carAnswer() asks for what is not on record', () => {
  expect(said([item('coolant', 'unknown', [], noBaseline)])).toBe(
    'Coolant is not on record: say when it was last done.',
  );
  const two = [
    item('coolant', 'unknown', [], noBaseline),
    item('belts', 'unknown', [], noBaseline),
  ];
  expect(said(two)).toBe('Coolant and belts are not on record: say when they were last done.');
});

test('carAnswer() gives a lower bound as one', () => {
  const least = sessions(6, { known: false });
  expect(said([item('gear oil', 'unknown', [least], { reasonCode: 'lowerBound' })])).toBe(
    'Gear oil: at least 10 sessions since the last service; the history is incomplete.',
  );
});

test('carAnswer() offers the next step where nothing is watched', () => {
  expect(said([])).toMatch(/^Nothing is watched on this car yet\. Add an item/);
});

test('carAnswer() never calls anything of a laid-up car overdue', () => {
  const answer = said([oil, fluid], { id: 'w', since: '2025-11-15', until: '2026-07-01' });
  expect(answer).toMatch(
    /^Laid up since 15 November 2025 until 1 July 2026\. Before it wakes: engine oil\./,
  );
  expect(answer).not.toMatch(/overdue/i);
});

test('carAnswer() names a day far off as what runs out first', () => {
  expect(said([item('coolant', null, [months(200, '2026-12-18')])])).toBe(
    'What runs out first: coolant, 18 December 2026 at the latest.',
  );
});

test('firstItem() is the most urgent with its words, and none of a car that is sold', () => {
  const facts = { unit: 'km' as const, items: [] };
  const one = analysis([fluid, oil]);
  expect(firstItem(one, facts)).toEqual({
    name: 'engine oil',
    words: { mark: 'overdue', word: 'Overdue', detail: '12 months passed on 2 May 2026' },
  });
  expect(firstItem({ ...one, status: 'sold' }, facts)).toBeNull();
  expect(firstItem(analysis([]), facts)).toBeNull();
});

const row = (name: string, items: ItemResult[], more: Partial<GarageRow> = {}): GarageRow => ({
  name,
  unit: 'km',
  laidUp: false,
  asOf: '2026-06-01',
  overdue: items.filter(({ state }) => state === 'overdue').length,
  dueSoon: items.filter(({ state }) => state === 'dueSoon').length,
  notOnRecord: items.filter(({ state }) => state === 'unknown').length,
  lane: {
    next: items.map((one) => laneItem(one, undefined)),
    odometer: null,
    level: null,
    oil: null,
    laidUp: null,
    status: 'inUse',
    stop: null,
    road: null,
    open: 0,
    flags: 0,
  },
  ...more,
});
const soon = item('brake fluid', 'dueSoon', [months(3, '2026-06-04')]);

test('garageAnswer() names the cars that need a hand, and why', () => {
  const rows = [row('Tern', [oil]), row('Wren', [soon]), row('Heron', [fluid])];
  expect(garageAnswer({ cars: 3, needsAHand: 2, rows })).toBe(
    'Two cars need a hand today: Tern (engine oil: overdue) and Wren (brake fluid: due soon).',
  );
  expect(garageAnswer({ cars: 3, needsAHand: 1, rows: [row('Tern', [oil])] })).toBe(
    'One car needs a hand today: Tern (engine oil: overdue).',
  );
});

test('garageAnswer() counts the cars beyond the first three, on whatever page they are', () => {
  const rows = ['a', 'b', 'c', 'd'].map((name) => row(name, [oil]));
  expect(garageAnswer({ cars: 300, needsAHand: 40, rows })).toMatch(
    /^40 cars need a hand today: a .*, b .*, c .* and 37 more\.$/,
  );
});

test('garageAnswer() passes over laid-up cars', () => {
  const asleep = row('Tern', [oil], { laidUp: true });
  expect(needsAHand(asleep)).toBe(false);
  expect(garageAnswer({ cars: 1, needsAHand: 0, rows: [asleep] })).toBe(
    'Nothing on record needs a hand today.',
  );
});

test('garageAnswer() does not take what is not on record for good', () => {
  const rows = [row('Tern', [item('coolant', 'unknown', [], noBaseline)])];
  expect(garageAnswer({ cars: 1, needsAHand: 0, rows })).toBe(
    'Nothing on record needs a hand today, but Tern has items that are not on record.',
  );
});

const stick = (name: string, level: Partial<NonNullable<Lane['level']>>): GarageRow => {
  const read = {
    fraction: null,
    mark: null,
    on: '2026-05-20',
    addedSinceL: 0,
    changedSince: false,
  };
  const one = row(name, []);
  return { ...one, lane: one.lane && { ...one.lane, level: { ...read, ...level } } };
};

test('garageAnswer() names each stick last read outside the marks, and what to do first', () => {
  const rows = [
    stick('Tern', { mark: 'over' }),
    stick('Wren', { mark: 'none' }),
    stick('Heron', { fraction: -0.2 }),
  ];
  expect(garageAnswer({ cars: 3, needsAHand: 0, rows })).toBe(
    'No item on record needs a hand today. Oil: Tern over MAX, Wren none on the stick and Heron below MIN. Look at it by the manual’s procedure before the next start.',
  );
  expect(
    garageAnswer({ cars: 2, needsAHand: 1, rows: [row('Lark', [oil]), rows[0] as GarageRow] }),
  ).toBe(
    'One car needs a hand today: Lark (engine oil: overdue). Oil: Tern over MAX. Look at it by the manual’s procedure before the next start.',
  );
});

test('garageAnswer() says nothing of a stick within the marks, or mended since', () => {
  const rows = [
    stick('Tern', { fraction: 0 }),
    stick('Wren', { mark: 'none', addedSinceL: 1 }),
    stick('Heron', { mark: 'over', changedSince: true }),
  ];
  expect(garageAnswer({ cars: 3, needsAHand: 0, rows })).toBe(
    'Nothing on record needs a hand today.',
  );
  expect(
    garageAnswer({
      cars: 1,
      needsAHand: 0,
      rows: [stick('Lark', { mark: 'over', addedSinceL: 1 })],
    }),
  ).toMatch(/Lark over MAX/);
});

test('garageAnswer() offers the first step in an empty garage', () => {
  expect(garageAnswer({ cars: 0, needsAHand: 0, rows: [] })).toMatch(/^No car yet\. Add one/);
});

const km = (more: object): LimitResult => ({
  measure: 'km',
  severe: false,
  limit: 10_000,
  known: true,
  accrued: 7_470,
  remaining: 2_530,
  fraction: 0.747,
  byClass: { road: 6_070, circuit: 1_400 },
  estimated: 0,
  reachedOn: null,
  ...more,
});
const limitsOf = (...limits: Limit[]): Pick<ItemInput, 'name' | 'limits' | 'severe'> => ({
  name: 'x',
  limits,
});
const weighted = limitsOf({
  measure: 'km',
  value: 10_000,
  unit: 'km',
  weights: { circuit: 4, strip: 0, touring: 0.5 },
});
const about = { service: '2025-05-02', item: weighted, unit: 'km' as const };

test('whySentence() says what was counted where, how heavily, and what does not count', () => {
  expect(whySentence(km({}), about)).toBe(
    '7,470 km counted since 2 May 2025: 6,070 km on the road and 350 km on circuits counted 4 times. The limit is 10,000 km. Use on the drag strip does not count.',
  );
});

test('whySentence() says a share counted at less than its amount', () => {
  expect(whySentence(km({ byClass: { touring: 500 } }), about)).toMatch(
    /1,000 km on road trips counted at 50 %\./,
  );
});

test('whySentence() tells figures worked out from figures read, and a lower bound from a sum', () => {
  const unsure = whySentence(km({ known: false, estimated: 350 }), about);
  expect(unsure).toMatch(/^At least 7,470 km counted/);
  expect(unsure).toMatch(/350 km of it is worked out from other figures/);
  expect(unsure).toMatch(/It may be more: part of the way since then is not in the log\.$/);
});

test('whySentence() names the day an amount was reached, and the schedule for hard use', () => {
  const why = whySentence(km({ reachedOn: '2026-05-02', severe: true }), about);
  expect(why).toMatch(/It was reached on 2 May 2026\./);
  expect(why).toMatch(/This limit comes from the schedule for hard use\.$/);
});

test('whySentence() uses the unit the limit was typed in', () => {
  const item = limitsOf({ measure: 'km', value: 7_500, unit: 'mi' });
  const limit = km({ limit: 12_070.08, accrued: 1_609.344, byClass: { road: 1_609.344 } });
  expect(whySentence(limit, { item, unit: 'km' })).toBe(
    '1,000 mi counted: 1,000 mi on the road. The limit is 7,500 mi.',
  );
});

test('whySentence() counts the days of a calendar limit', () => {
  expect(whySentence(months(12, '2026-05-02'), about)).toBe(
    '12 months from 2 May 2025, good through 2 May 2026: 12 days left.',
  );
  expect(whySentence(months(-1, '2026-05-02'), about)).toMatch(
    /good through 2 May 2026: 1 day ago\.$/,
  );
});

const CODES: Record<FlagCode, RegExp> = {
  future: /lies ahead/,
  readingRejected: /does not fit/,
  readingTooFast: /2,000 km or 24 hours a day/,
  unloggedExchange: /dropped/,
  rollOver: /rolled over/,
  loggedExceedsMeter: /more than the meter shows/,
  exchangeWithoutOldValue: /without its last value/,
  valueIgnored: /cannot be used/,
  looksTheSame: /looks the same/,
  orderAssumed: /share a day/,
  fitConflict: /still has it elsewhere/,
  fitNotOn: /does not have it on/,
  fitWithoutCar: /does not say which car/,
  fitOrderAssumed: /day the car was driven/,
  setNotOn: /names this set/,
};

test.each(Object.entries(CODES))('flagSentence() explains %s and how to mend it', (code, words) => {
  const flag = { code: code as FlagCode, entry: 'e', on: '2026-05-02', value: '41,200 km' };
  const sentence = flagSentence(flag);
  expect(sentence).toMatch(words);
  expect(sentence).toMatch(/2 May 2026/);
  expect(sentence).toMatch(/amend|Nothing to do|Remove one/i);
  const bare = flagSentence({ ...flag, on: null, value: null });
  expect(bare).not.toMatch(/null|undefined/);
});

const NEVER = /P10|P50|P90|accru|binding|severe|hypothes|quantile|percentile|\bready\b/i;

test('no sentence holds a word that only the engine uses', () => {
  const limits = [
    km({ severe: true, known: false, estimated: 5, reachedOn: '2026-05-02' }),
    sessions(3),
  ];
  const states = [
    item('a', 'overdue', limits),
    item('b', 'dueSoon', [months(3, '2026-06-04')]),
    item('c', 'unknown', [], noBaseline),
    item('d', 'unknown', [km({ known: false })], { reasonCode: 'lowerBound' }),
    item('e', null, limits),
    item('f', 'fine', limits),
  ];
  const flags = Object.keys(CODES).map((code) =>
    flagSentence({ code: code as FlagCode, entry: null, on: null, value: null }),
  );
  const all = [said(states), ...limits.map((limit) => whySentence(limit, about)), ...flags];
  for (const sentence of all) expect(sentence).not.toMatch(NEVER);
});
