import fc from 'fast-check';
import { formatDay, parseDay } from '../src/calendar/day-number.ts';
import { incidentSort } from '../src/log/common.ts';
import type { BookDraft, ItemDraft } from '../src/log/index.ts';
import { km, type Line } from './car-book.ts';

// Few days and few times, so that much falls on the same minute; answers, services and wake-ups that
// fit what is there or do not.

const START = parseDay('2026-06-08');
const CORNERS = ['frontLeft', 'frontRight', 'rearLeft', 'rearRight'] as const;
const frame = {
  on: fc.integer({ min: 0, max: 9 }).map((day) => formatDay(START + day)),
  time: fc.option(fc.constantFrom('00:00', '12:00', '18:30'), { nil: undefined }),
  odometer: fc.option(
    fc.integer({ min: 0, max: 900 }).map((value) => km(10_000 + value)),
    { nil: undefined },
  ),
  removed: fc.boolean(),
};
const id = fc.integer({ min: 0, max: 24 }).map((index) => `e${index}`);
const optional = <T>(one: fc.Arbitrary<T>) => fc.option(one, { nil: undefined });
const lines = fc.array(
  fc.record({
    what: fc.constantFrom('Battery', 'battery ', 'Exhaust', 'Cover'),
    how: fc.constantFrom('disconnected' as const, 'plugged' as const, 'covered' as const),
  }),
  { maxLength: 3 },
);

const line: fc.Arbitrary<Line> = fc.oneof(
  fc.record({
    kind: fc.constant('finding' as const),
    ...frame,
    what: fc.constant('Hose'),
    severity: fc.constantFrom('doNotDrive' as const, 'watch' as const, 'cosmetic' as const),
    dueBy: optional(frame.on),
    resolvedBy: optional(id),
  }),
  fc.record({
    kind: fc.constant('incident' as const),
    ...frame,
    what: fc.constantFrom(...incidentSort.options),
  }),
  fc.record({
    kind: fc.constant('answer' as const),
    ...frame,
    notice: id,
    answer: fc.constant('x'),
  }),
  fc.record({
    kind: fc.constant('wheels' as const),
    ...frame,
    change: fc.constantFrom('off' as const, 'torqued' as const, 'rechecked' as const),
    which: optional(fc.uniqueArray(fc.constantFrom(...CORNERS), { maxLength: 4 })),
  }),
  fc.record({ kind: fc.constant('layUp' as const), ...frame, lines }),
  fc.record({ kind: fc.constant('wakeUp' as const), ...frame, lines }),
  fc.record({
    kind: fc.constant('handover' as const),
    ...frame,
    what: fc.constantFrom('bought' as const, 'sold' as const, 'lent' as const, 'returned' as const),
  }),
  fc.record({
    kind: fc.constant('session' as const),
    ...frame,
    use: fc.constantFrom('circuit' as const, 'autocross' as const),
    sessions: fc.integer({ min: 0, max: 3 }),
    oilTempPeak: optional(
      fc.integer({ min: 90, max: 150 }).map((c) => ({ text: String(c), unit: 'c' as const })),
    ),
  }),
  fc.record({
    kind: fc.constant('odometer' as const),
    ...frame,
    odometer: fc.constant(km(10_400)),
  }),
  fc.record({
    kind: fc.constant('meterReplaced' as const),
    ...frame,
    meter: fc.constant('odometer' as const),
    newFirst: fc.constant(km(5)),
  }),
  fc.record({
    kind: fc.constant('service' as const),
    ...frame,
    items: fc.uniqueArray(fc.constantFrom('a', 'b'), { minLength: 1, maxLength: 2 }),
  }),
);

const item = (name: string): fc.Arbitrary<ItemDraft & { id: string }> =>
  fc.record({
    id: fc.constant(name),
    name: fc.constant(name),
    limits: fc.constantFrom<ItemDraft['limits']>(
      [{ measure: 'sessions', value: 4 }],
      [{ measure: 'months', value: 1 }],
      [{ measure: 'km', value: 500, unit: 'mi' }],
    ),
    baseline: optional(fc.record({ on: frame.on, time: frame.time })),
    once: optional(fc.boolean()),
    dueSince: optional(frame.on),
    triggers: optional(
      fc.record({
        incidents: fc.constant(['softPedal' as const, 'off' as const]),
        oilHotterThanC: fc.constant(120),
        wheelsOff: fc.boolean(),
      }),
    ),
  });

/** A log of findings, incidents, wheels, lay-ups and handovers of any kind, with two items. */
export const arbitraryLog: fc.Arbitrary<{
  lines: Line[];
  items: BookDraft['items'];
  layUps: BookDraft['layUps'];
}> = fc.record({
  lines: fc.array(line, { maxLength: 25 }),
  items: fc.tuple(item('a'), item('b')),
  layUps: fc.constantFrom([], [{ id: 'w', start: '2026-06-10' }]),
});
