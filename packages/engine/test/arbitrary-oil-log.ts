import fc from 'fast-check';
import { formatDay, parseDay } from '../src/calendar/day-number.ts';

// Few days and few odometer values, so that much falls on one stop; values far outside of what anybody
// would write, and some that are no values at all.

const START = parseDay('2024-03-01');
const optional = <T>(one: fc.Arbitrary<T>) => fc.option(one, { nil: undefined });
const odd = fc.constantFrom(null, '', 'x', Number.NaN, -1, 1e308, [], {}, true);
/** Mostly what it should be. */
const mostly = <T>(one: fc.Arbitrary<T>) =>
  fc.oneof({ weight: 12, arbitrary: one }, { weight: 1, arbitrary: odd });

const at = fc
  .tuple(fc.integer({ min: 0, max: 500 }), fc.constantFrom('', 'T00:00', 'T08:30', 'T23:59'))
  .map(([day, time]) => formatDay(START + day) + time);
const odometerKm = mostly(
  fc.oneof(
    fc.integer({ min: 30_000, max: 60_000 }),
    fc.constantFrom(30_000, 30_001, 30_020, 45_000),
    fc.constantFrom(0, 1e-9, 9_999_999),
  ),
);
const level = mostly(
  fc.oneof(
    fc.double({ min: -0.5, max: 1.6, noNaN: true }),
    fc.constantFrom<unknown>('none', 0, 1, 0.5, 1.6, -0.5, 1.61),
  ),
);
const volumeL = mostly(
  fc.oneof(fc.double({ min: 0.01, max: 15, noNaN: true }), fc.constantFrom(0.01, 0.5, 15, 16)),
);
const amount = mostly(fc.oneof(fc.integer({ min: 0, max: 400 }), fc.constantFrom(0, 1e-12, 1e9)));
const condition = optional(
  fc.record({
    state: fc.constantFrom('hotIdle', 'hotStopped', 'cold', 'warm'),
    minutesAfterStop: optional(mostly(fc.integer({ min: 0, max: 200 }))),
    oilTempC: optional(mostly(fc.integer({ min: -60, max: 250 }))),
  }),
);
const frame = { at: mostly(at), odometerKm: optional(odometerKm), condition };

const entry = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.record({
      ...frame,
      kind: fc.constant('reading'),
      level,
      step: optional(mostly(fc.double({ min: 1e-9, max: 1, noNaN: true }))),
      quality: fc.constantFrom('good', 'poor', undefined),
    }),
  },
  {
    weight: 4,
    arbitrary: fc.record({
      ...frame,
      kind: fc.constant('topUp'),
      volumeL: optional(volumeL),
      filledToMax: fc.constantFrom(true, false, undefined),
      levelBefore: optional(level),
      levelAfter: optional(level),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      ...frame,
      kind: fc.constant('oilChange'),
      volumeL: optional(volumeL),
      levelAfter: optional(level),
    }),
  },
  {
    weight: 3,
    arbitrary: fc.record({
      ...frame,
      kind: fc.constant('use'),
      useClass: mostly(fc.constantFrom('road', 'touring', 'circuit', 'autocross', 'strip')),
      distanceKm: optional(amount),
      hours: optional(amount),
      sessions: optional(amount),
      runs: optional(amount),
    }),
  },
  fc.record({
    ...frame,
    kind: fc.constant('odometerReplaced'),
    oldOdometerKm: optional(odometerKm),
  }),
  fc.record({ ...frame, kind: fc.constantFrom('repair', 'note', 'wash') }),
);

const prior = optional(
  fc.record({
    median: mostly(fc.constantFrom(1e-9, 0.25, 1000)),
    sdLog: mostly(fc.constantFrom(1e-9, 0.5, 10)),
  }),
);

/** The file with several bottles at one stop: some entries stand there twice or three times. */
const entries = fc
  .array(fc.tuple(entry, fc.constantFrom(1, 1, 1, 2, 3)), { maxLength: 24, size: 'max' })
  .map((all) => all.flatMap(([one, times]) => Array.from({ length: times }, () => one)))
  .map((all) => all.map((one, index) => ({ ...one, id: `e${index}`, recorded: index })));

/** An `oil/1` file of any kind. Its entries carry `recorded`. */
export const arbitraryOilLog = fc.record({
  car: fc.record({
    id: fc.constant('car'),
    spanL: optional(mostly(fc.constantFrom(1e-6, 0.4, 1, 1.5, 20))),
    capacityL: optional(mostly(fc.constantFrom(0.1, 5, 60))),
    drySump: fc.boolean(),
    readingProcedure: condition,
    priors: optional(fc.record({ roadRate: prior, circuitRatio: prior, stripRun: prior })),
  }),
  entries,
  asOf: optional(
    fc.record({
      at: mostly(at),
      odometerKm: optional(odometerKm),
      inUse: fc.constantFrom(true, false, undefined),
      expectedKm: optional(
        fc.record({
          mean: mostly(fc.constantFrom(0, 500, 1e6)),
          var: mostly(fc.constantFrom(0, 1e4, 1e12)),
        }),
      ),
    }),
  ),
});
