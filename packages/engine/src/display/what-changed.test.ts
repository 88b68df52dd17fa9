import { expect, test } from 'vitest';
import { noOilYet } from '../../test/no-oil-yet.ts';
import { nothingOpen } from '../../test/nothing-open.ts';
import type {
  AmountLimitResult,
  Analysis,
  ItemResult,
  LastLevel,
  LimitResult,
} from '../wear/result.ts';
import { whatChanged } from './what-changed.ts';

const analysis = (more: Partial<Analysis>): Analysis => ({
  schema: 1,
  engineVersion: 1,
  car: 'car',
  asOf: '2026-06-15',
  flags: [],
  items: [],
  laidUp: null,
  odometer: null,
  lastLevel: null,
  oil: noOilYet(),
  ...nothingOpen,
  ...more,
});
const sessions = (accrued: number, more: Partial<AmountLimitResult> = {}): AmountLimitResult => ({
  measure: 'sessions',
  severe: false,
  limit: 18,
  known: true,
  accrued,
  remaining: 18 - accrued,
  fraction: accrued / 18,
  byClass: {},
  estimated: 0,
  reachedOn: null,
  ...more,
});
const km = (accrued: number): AmountLimitResult => ({
  ...sessions(0),
  measure: 'km',
  limit: 16_093.44,
  accrued,
  remaining: 16_093.44 - accrued,
  fraction: accrued / 16_093.44,
});
const item = (state: ItemResult['state'], limits: LimitResult[], more = {}): ItemResult => ({
  id: 'brake',
  state,
  reason: null,
  reasonCode: null,
  service: '2026-04-04',
  binding: null,
  limits,
  evidence: [],
  ...more,
});
const facts = {
  unit: 'mi',
  volumeUnit: 'usQt',
  distanceUnit: 'mi',
  drySump: false,
  items: [
    {
      id: 'brake',
      item: {
        name: 'Brake fluid',
        limits: [
          { measure: 'sessions', value: 18 },
          { measure: 'km', value: 10_000, unit: 'mi' },
        ],
      },
    },
  ],
} as const satisfies Parameters<typeof whatChanged>[2];
const changed = (before: ItemResult, after: ItemResult) =>
  whatChanged(analysis({ items: [before] }), analysis({ items: [after] }), facts);

test('whatChanged() shows the remainder before and after, the unit once', () => {
  expect(changed(item(null, [sessions(6)]), item(null, [sessions(10)]))).toEqual([
    'Brake fluid: 12 → 8 sessions left.',
  ]);
});

test('whatChanged() speaks of the limit whose figure moved, in the unit it was typed in', () => {
  const before = item(null, [sessions(17), km(0)]);
  expect(changed(before, item(null, [sessions(17), km(160.9344)]))).toEqual([
    'Brake fluid: 10,000 → 9,900 mi left.',
  ]);
});

test('whatChanged() says a change of state in words, with the figures behind it', () => {
  expect(
    changed(
      item(null, [sessions(16)]),
      item('overdue', [sessions(20, { reachedOn: '2026-06-14' })]),
    ),
  ).toEqual([
    'Brake fluid: 2 sessions left, no date yet → overdue, 18 sessions reached on 14 June 2026, 2 sessions over.',
  ]);
});

test('whatChanged() counts on past the limit', () => {
  expect(changed(item('overdue', [sessions(20)]), item('overdue', [sessions(23)]))).toEqual([
    'Brake fluid: 2 → 5 sessions over.',
  ]);
});

test('whatChanged() says from when an item counts after its service', () => {
  const after = item(null, [sessions(0)], { service: '2026-06-14' });
  expect(changed(item('overdue', [sessions(20)]), after)).toEqual([
    'Brake fluid: counted from 14 June 2026; 18 sessions left, no date yet.',
  ]);
});

test('whatChanged() keeps "at least" where the history is incomplete', () => {
  const unsure = (accrued: number) =>
    item('unknown', [sessions(accrued, { known: false })], { reasonCode: 'lowerBound' });
  expect(changed(unsure(4), unsure(5))).toEqual(['Brake fluid: 4 → 5 sessions counted, at least.']);
});

test('whatChanged() says how an item stands that was not watched before', () => {
  const after = analysis({ items: [item(null, [sessions(6)])] });
  expect(whatChanged(analysis({}), after, facts)).toEqual([
    'Brake fluid is watched from now on: 12 sessions left, no date yet, 6 sessions of 18 sessions used.',
  ]);
});

test('whatChanged() tells a likely day that moved by more than three days', () => {
  const likely = (p50: string | null, accrued = 6) =>
    item('fine', [sessions(accrued)], {
      binding: 'sessions',
      dueDate: { p10: '2026-07-20', p50, p90: null },
    });
  expect(changed(likely('2026-09-01'), likely('2026-09-04'))).toEqual([]);
  expect(changed(likely('2026-09-01'), likely('2026-09-05'))).toEqual([
    'Brake fluid: likely by 1 September → 5 September.',
  ]);
  expect(changed(likely('2026-09-01'), likely('2026-08-02', 10))).toEqual([
    'Brake fluid: 12 → 8 sessions left; likely by 1 September → 2 August.',
  ]);
  expect(changed(likely('2028-09-01'), likely(null))).toEqual([
    'Brake fluid: likely by 1 September 2028 → nothing likely before June 2029.',
  ]);
});

test('whatChanged() says nothing where nothing a person reads differs', () => {
  const same = item(null, [sessions(6), km(100)]);
  expect(changed(same, item(null, [sessions(6), km(100.01)]))).toEqual([]);
});

test('whatChanged() adds the readings', () => {
  const level = (more: Partial<LastLevel>): LastLevel => ({
    entry: 'e1',
    on: '2026-06-14',
    fraction: 0.5,
    mark: null,
    offProcedure: false,
    addedSinceL: 0,
    changedSince: false,
    ...more,
  });
  const before = analysis({
    odometer: { entry: 'e1', on: '2026-06-01', readingKm: 16_093.44, totalKm: 100 },
    lastLevel: level({}),
  });
  const after = analysis({
    odometer: { entry: 'e2', on: '2026-06-14', readingKm: 16_254.3744, totalKm: 260.9344 },
    lastLevel: level({ addedSinceL: 0.946352946 }),
  });
  expect(whatChanged(before, after, facts)).toEqual([
    'Odometer: 10,000 → 10,100 mi.',
    'Oil on the stick: half → half, 1 US qt added since.',
  ]);
  expect(whatChanged(analysis({}), before, facts)).toEqual([
    'Odometer: 10,000 mi.',
    'Oil on the stick: not on record → half.',
  ]);
});

test('whatChanged() tells what is newly found odd, and not what was known', () => {
  const old = { code: 'rollOver', entry: 'e1', on: '2026-06-01', value: null } as const;
  const fresh = {
    code: 'readingRejected',
    entry: 'e2',
    on: '2026-06-14',
    value: '100 mi',
  } as const;
  const said = whatChanged(analysis({ flags: [old] }), analysis({ flags: [old, fresh] }), facts);
  expect(said).toHaveLength(1);
  expect(said[0]).toContain('100 mi of 14 June 2026 does not fit');
});
