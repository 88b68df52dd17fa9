import { expect, test } from 'vitest';
import { garageAnswer, garageSentences } from './garage-answer.ts';
import { type GarageRow, needsAHand } from './garage-row.ts';
import type { Lane, LaneItem, LaneRoad } from './lane.ts';

const READY: LaneRoad = { word: 'ready', by: null, why: null, needs: 0 };
const stale: LaneRoad = {
  word: 'notOnRecord',
  by: null,
  why: 'Odometer: not on record.',
  needs: 1,
};
const work = (by: string): LaneRoad => ({ word: 'canBeReady', by, why: 'x', needs: 1 });
const overdue: LaneItem = {
  id: 'oil',
  name: 'Engine oil',
  state: 'overdue',
  reasonCode: null,
  binding: 'months',
  limit: 12,
  remaining: null,
  unit: null,
  day: '2026-05-02',
};

const row = (name: string, lane: Partial<Lane>, more: Partial<GarageRow> = {}): GarageRow => ({
  name,
  unit: 'km',
  laidUp: false,
  asOf: '2026-06-08',
  overdue: lane.next?.length ?? 0,
  dueSoon: 0,
  notOnRecord: 0,
  lane: {
    next: [],
    odometer: null,
    level: null,
    oil: null,
    laidUp: null,
    status: 'inUse',
    stop: null,
    road: READY,
    open: 0,
    flags: 0,
    ...lane,
  },
  ...more,
});
const tern = row('Tern', { next: [overdue], road: work('2026-06-11') });
const wren = row('Wren', { road: stale });
const heron = row('Heron', {});

const said = (cars: number, needy: number, ready: number, rows: GarageRow[], known = cars) =>
  garageAnswer({ cars, needsAHand: needy, road: { ready, known }, rows });

test('garageAnswer() says how many are ready for the road, then what needs a hand', () => {
  expect(said(8, 2, 6, [tern, wren, heron])).toBe(
    'Ready for the road, by the log: six of eight cars. Two need a hand: Tern (Engine oil: overdue) and Wren (Odometer: not on record).',
  );
  expect(said(3, 0, 3, [heron])).toBe('Ready for the road, by the log: all three cars.');
  expect(said(2, 2, 0, [tern, wren])).toMatch(
    /^Ready for the road, by the log: none of two cars\./,
  );
});

test('garageAnswer() leaves out of the count what is not in use', () => {
  const away = row('Lark', { status: 'away', road: null });
  expect(said(5, 1, 2, [tern, heron, away], 3)).toBe(
    'Ready for the road, by the log: two of the three in use. One needs a hand: Tern (Engine oil: overdue). Away: Lark.',
  );
  expect(said(2, 0, 1, [heron, away], 1)).toMatch(/^Ready .*: the one in use\. Away/);
  expect(said(2, 1, 0, [wren, away], 1)).toMatch(/^Ready .*: not the one in use\. One needs/);
  expect(said(1, 0, 0, [away], 0)).toBe('Nothing on record needs a hand today. Away: Lark.');
});

test('garageAnswer() of the only car says whether it is ready, and else what keeps it', () => {
  expect(said(1, 0, 1, [heron])).toBe('Ready for the road, by the log.');
  expect(said(1, 1, 0, [tern])).toBe(
    'Can be ready for the road by Thu 11: Tern (Engine oil: overdue).',
  );
  const today = row('Tern', { next: [overdue], road: work('2026-06-08') });
  expect(said(1, 1, 0, [today])).toMatch(/^Can be ready for the road today: Tern/);
  expect(said(1, 1, 0, [wren])).toBe(
    'Not on record whether it is ready for the road: Wren (Odometer: not on record).',
  );
  const stopped = row('Tern', { stop: 'doNotDrive', road: work('2026-06-08') });
  expect(said(1, 1, 0, [stopped])).toBe('Not ready for the road: Tern (do not drive).');
});

test('garageAnswer() does not let what is ready hide what soon runs out, or is not on record', () => {
  const soon = row(
    'Tern',
    { next: [{ ...overdue, state: 'dueSoon' }] },
    { dueSoon: 1, overdue: 0 },
  );
  expect(said(1, 1, 1, [soon])).toBe(
    'Ready for the road, by the log. One needs a hand: Tern (Engine oil: due soon).',
  );
  expect(said(1, 0, 1, [row('Tern', {}, { notOnRecord: 1 })])).toBe(
    'Ready for the road, by the log, but Tern has items that are not on record.',
  );
});

test('garageSentences() stays short with a thousand cars, whatever they are called', () => {
  const rows = Array.from({ length: 50 }, (_, at) => ({ ...tern, name: `Ardvane ${at}` }));
  const [first = ''] = garageSentences({
    cars: 1000,
    needsAHand: 380,
    road: { ready: 620, known: 990 },
    rows,
  });
  expect(first).toBe(
    'Ready for the road, by the log: 620 of the 990 in use. 380 need a hand: Ardvane 0 (Engine oil: overdue), Ardvane 1 (Engine oil: overdue) and 378 more.',
  );
  const before = garageAnswer({ cars: 1000, needsAHand: 380, rows });
  expect(first.length).toBeLessThanOrEqual(before.length + 24);
});

test('needsAHand() counts a car that is in use and not ready for the road', () => {
  expect([tern, wren, heron].map(needsAHand)).toEqual([true, true, false]);
  expect(needsAHand(row('Lark', { status: 'away', road: stale }))).toBe(false);
});
