import fc from 'fast-check';
import { expect, test } from 'vitest';
import { needOf } from '../../test/need-of.ts';
import { noOilYet } from '../../test/no-oil-yet.ts';
import { nothingOpen } from '../../test/nothing-open.ts';
import { book } from '../log/book.ts';
import type { OpenFinding } from '../matters/result.ts';
import type { CarReadiness } from '../readiness/result.ts';
import type { Analysis, ItemResult, LimitResult } from '../wear/result.ts';
import { LANE_BYTES_MAX, laneOf } from './lane-of.ts';
import { itemUrgency, urgencyOf } from './urgency-of.ts';

const zone = 'Europe/Lisbon';

function km(fraction: number, known = true): LimitResult {
  const accrued = fraction * 10_000;
  return {
    measure: 'km',
    severe: false,
    limit: 10_000,
    known,
    accrued,
    remaining: 10_000 - accrued,
    fraction,
    byClass: { road: accrued },
    estimated: 0,
    reachedOn: fraction >= 1 ? '2026-05-02' : null,
  };
}

function months(remainingDays: number): LimitResult {
  const dueDate = remainingDays < 0 ? '2026-05-02' : '2026-07-02';
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

function label(date: string): LimitResult {
  return { ...months(20), measure: 'date', limit: date, dueDate: date } as LimitResult;
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

function analysis(items: ItemResult[], more: Partial<Analysis> = {}): Analysis {
  return {
    schema: 1,
    engineVersion: 1,
    car: 'c',
    asOf: '2026-06-01',
    flags: [],
    items,
    laidUp: null,
    odometer: null,
    lastLevel: null,
    oil: noOilYet(),
    ...nothingOpen,
    ...more,
  };
}

function bookOf(names: Record<string, string>) {
  const items = Object.entries(names).map(([id, name]) => ({
    id,
    name,
    limits: [{ measure: 'km' as const, value: 10_000, unit: 'km' as const }],
  }));
  const car = { id: 'c', unit: 'km' as const };
  return book.parse({
    format: 'log/1',
    asOf: '2026-06-01',
    garage: { zone },
    car,
    items,
    layUps: [],
    planned: [],
    entries: [],
  });
}

const due = (p10: string | null, p50: string | null) => ({
  binding: 'km',
  dueDate: { p10, p50, p90: null },
});

const inOrder: ItemResult[] = [
  item('far over', 'overdue', [km(1.5)]),
  item('just over', 'overdue', [km(1), months(100)]),
  item('in 3 days', 'dueSoon', [label('2026-06-04'), km(0.99)]),
  item('early, likely late', 'dueSoon', [km(0.7)], due('2026-06-05', '2026-09-01')),
  item('likely sooner', 'dueSoon', [km(0.9)], due('2026-06-06', '2026-06-10')),
  item('in 20 days', 'dueSoon', [label('2026-06-21')]),
  item('at least', 'unknown', [km(0.8, false)], { reasonCode: 'lowerBound' }),
  item('at least less', 'unknown', [km(0.2, false)], { reasonCode: 'lowerBound' }),
  item('nothing known', 'unknown', [], { reasonCode: 'noBaseline' }),
  item('in autumn', 'fine', [km(0.2)], due('2026-07-20', '2026-10-03')),
  item('in winter', 'fine', [km(0.5)], due('2026-07-10', '2026-12-03')),
  item('nearly used', null, [km(0.9)]),
  item('beyond three years', 'fine', [km(0.4)], due(null, null)),
  item('little used', null, [km(0.1)]),
];

test('itemUrgency() puts overdue first, then by day, then what is not sure, then by likely day and use', () => {
  const sorted = inOrder.toReversed().toSorted((a, b) => itemUrgency(a) - itemUrgency(b));
  expect(sorted.map(({ id }) => id)).toEqual(inOrder.map(({ id }) => id));
});

test('urgencyOf() is that of the most urgent item', () => {
  const [first] = inOrder;
  expect(urgencyOf(analysis(inOrder.toReversed()))).toBe(first && itemUrgency(first));
});

test('urgencyOf() puts a car without items last, and laid-up cars after all in use', () => {
  const laidUp = { id: 'w', since: '2025-11-01', until: null };
  const empty = urgencyOf(analysis([]));
  expect(empty).toBeGreaterThan(urgencyOf(analysis([item('x', 'fine', [km(0)])])));
  expect(urgencyOf(analysis(inOrder, { laidUp, status: 'laidUp' }))).toBeGreaterThan(empty);
});

test('urgencyOf() puts what forbids driving before all, and cars that are gone after all', () => {
  const overdue = [item('x', 'overdue', [km(99)])];
  const brake: OpenFinding = {
    entry: 'f',
    on: '2026-05-30',
    what: 'Hose cracked',
    where: 'rearLeft',
    severity: 'doNotDrive',
    dueBy: null,
    photos: [],
  };
  const matters = { ...nothingOpen.matters, findings: [brake] };
  expect(urgencyOf(analysis([], { matters }))).toBeLessThan(urgencyOf(analysis(overdue)));
  const laidUp = urgencyOf(analysis(overdue, { status: 'laidUp' }));
  expect(urgencyOf(analysis(overdue, { status: 'sold', matters }))).toBeGreaterThan(laidUp);
  expect(laneOf(bookOf({}), analysis([], { matters }), null)).toMatchObject({
    stop: 'doNotDrive',
    open: 1,
  });
});

test('urgencyOf() fits a 32-bit integer whatever the figures', () => {
  const state = fc.constantFrom('overdue', 'dueSoon', 'unknown', 'fine', null);
  fc.assert(
    fc.property(
      state,
      fc.double({ min: 0, noNaN: true }),
      fc.integer(),
      (found, fraction, days) => {
        const urgency = urgencyOf(analysis([item('x', found, [km(fraction), months(days)])]));
        expect(Number.isInteger(urgency)).toBe(true);
        expect(urgency).toBeGreaterThanOrEqual(0);
        expect(urgency).toBeLessThan(2 ** 31);
      },
    ),
  );
});

test('laneOf() shows the three most urgent items with the limit each rests on', () => {
  const names = Object.fromEntries(inOrder.map(({ id }) => [id, id.toUpperCase()]));
  const { next } = laneOf(bookOf(names), analysis(inOrder.toReversed()), null);
  expect(next.map(({ name }) => name)).toEqual(['FAR OVER', 'JUST OVER', 'IN 3 DAYS']);
  expect(next[0]).toEqual({
    id: 'far over',
    name: 'FAR OVER',
    state: 'overdue',
    reasonCode: null,
    binding: 'km',
    limit: 10_000,
    remaining: -5_000,
    unit: 'km',
    day: '2026-05-02',
  });
});

test('laneOf() carries the likely and the early day', () => {
  const soon = item('soon', 'dueSoon', [km(0.9)], due('2026-06-06', '2026-06-10'));
  expect(laneOf(bookOf({ soon: 'Engine oil' }), analysis([soon]), null).next[0]).toMatchObject({
    likely: '2026-06-10',
    early: '2026-06-06',
  });
});

test('laneOf() counts the flags that somebody can mend', () => {
  const flag = (code: 'future' | 'rollOver' | 'readingRejected') => ({
    code,
    entry: null,
    on: null,
    value: null,
  });
  const flags = [flag('future'), flag('rollOver'), flag('readingRejected')];
  expect(laneOf(bookOf({}), analysis([], { flags }), null).flags).toBe(1);
});

test('laneOf() carries odometer, level and lay-up without what a list does not show', () => {
  const full = analysis([], {
    odometer: { entry: 'e', on: '2026-05-02', readingKm: 5, totalKm: 9 },
    lastLevel: {
      entry: 'e',
      on: '2026-05-02',
      fraction: 0.5,
      mark: null,
      offProcedure: true,
      addedSinceL: 1,
      changedSince: false,
    },
    laidUp: { id: 'w', since: '2025-11-01', until: null },
    status: 'laidUp',
  });
  expect(laneOf(bookOf({}), full, null)).toEqual({
    next: [],
    odometer: { readingKm: 5, on: '2026-05-02' },
    level: { fraction: 0.5, mark: null, on: '2026-05-02', addedSinceL: 1, changedSince: false },
    oil: null,
    laidUp: { since: '2025-11-01', until: null },
    status: 'laidUp',
    stop: null,
    road: null,
    open: 0,
    flags: 0,
  });
});

const bytes = (value: unknown) => new TextEncoder().encode(JSON.stringify(value)).length;
const passed = (fraction: number): LimitResult => {
  const dates = due('2026-06-06', '2026-06-10').dueDate;
  return { ...km(fraction, false), due: dates } as LimitResult;
};
const crowd = (name: string, id: (index: number) => string) => {
  const items = Array.from({ length: 60 }, (_, index) =>
    item(id(index), 'dueSoon', [passed(Math.PI / (index + 4))], {
      ...due('2026-06-06', '2026-06-10'),
      probablyOverdue: true,
    }),
  );
  const names = Object.fromEntries(items.map((one) => [one.id, name]));
  return { lane: laneOf(bookOf(names), analysis(items), roadOf(name)), items };
};
const roadOf = (title: string): CarReadiness => ({
  car: 'c',
  use: 'road',
  event: null,
  verdict: { word: 'canBeReady', by: '2026-06-04' },
  needs: [needOf({ title, status: 'notMet', reason: `${title} has run out.` })],
});

test('laneOf() stays within 1 KB with 60 items of 200-character names', () => {
  const uuid = (index: number) => `0190a1b2-c3d4-7e5f-8a9b-${String(index).padStart(12, '0')}`;
  const { lane } = crowd('n'.repeat(200), uuid);
  expect(lane.next).toHaveLength(3);
  expect(bytes(lane)).toBeLessThanOrEqual(LANE_BYTES_MAX);
  expect(lane.next[0]?.name.length).toBeGreaterThanOrEqual(24);
  expect(lane.road?.why).toMatch(/^n{10,}…: not met\.$/);
});

test.each(['🛢️', '\u0001', '"', 'é'])('laneOf() stays within 1 KB with names full of %j', (sign) => {
  const name = `x${sign.repeat(Math.floor(198 / sign.length))}x`;
  const { lane } = crowd(name, (index) => `${sign.repeat(20)}${index}`);
  expect(bytes(lane)).toBeLessThanOrEqual(LANE_BYTES_MAX);
  expect(lane.next.length).toBeGreaterThan(0);
  // a cut name holds no half of a character
  for (const shown of lane.next) expect(shown.name).not.toMatch(/\p{Surrogate}/u);
});
