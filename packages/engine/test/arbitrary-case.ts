import fc from 'fast-check';
import { formatDay, parseDay } from '../src/calendar/day-number.ts';
import type { CarCase, CaseEntry, CaseItem, CaseLimit } from '../src/history/case.ts';
import { AMOUNT_MEASURES, USE_CLASSES } from '../src/log/item.ts';

// Degenerate on purpose: few days, so that much falls on the same one; odometers that jump about;
// entries without ids, times or amounts; limits of next to nothing.

const START = parseDay('2024-01-28');
const date = fc.integer({ min: 0, max: 60 }).map((day) => formatDay(START + day));
/** After the last entry there can be. */
const soon = fc.integer({ min: 30, max: 200 }).map((day) => formatDay(START + day));
const minute = fc.option(fc.constantFrom(0, 420, 720, 1439));
const amount = fc.option(fc.oneof(fc.constant(0), fc.double({ min: 0, max: 900, noNaN: true })));
const count = fc.option(fc.integer({ min: 0, max: 6 }));
const odometer = fc.oneof(
  fc.integer({ min: 0, max: 1200 }),
  fc.integer({ min: 99_000, max: 100_000 }),
  fc.double({ min: 0, max: 1e6, noNaN: true }),
);
const itemId = fc.constantFrom('a', 'b', 'c');

const common = {
  id: fc.option(fc.integer({ min: 0, max: 99 }).map(String)),
  date,
  minute,
  recorded: fc.option(fc.nat(50)),
  kind: fc.constantFrom('x', 'y'),
};
const meters = {
  odometerKm: fc.option(odometer),
  hourMeterH: fc.option(fc.double({ min: 0, max: 400, noNaN: true })),
};

type Bare = CaseEntry extends infer E ? Omit<E, 'canonical'> : never;
const entry = fc
  .oneof(
    fc.record({ type: fc.constant('reading' as const), ...common, ...meters }),
    fc.record({
      type: fc.constant('use' as const),
      ...common,
      useClass: fc.constantFrom(...USE_CLASSES),
      endDate: fc.option(date),
      distanceKm: amount,
      hours: amount,
      sessions: count,
      launches: count,
      plannedOn: fc.option(date),
    }),
    fc.record({
      type: fc.constant('service' as const),
      ...common,
      ...meters,
      items: fc.array(itemId, { minLength: 1, maxLength: 2 }),
      complete: fc.boolean(),
    }),
    fc.record({
      type: fc.constant('meterReset' as const),
      ...common,
      meter: fc.constantFrom('odo' as const, 'hours' as const),
      oldValue: fc.option(odometer),
      newValue: odometer,
    }),
  )
  .map((bare: Bare) => ({ ...bare, canonical: JSON.stringify(bare) }) as CaseEntry);

const weights = fc.dictionary(
  fc.constantFrom(...USE_CLASSES),
  fc.oneof(fc.constant(0), fc.double({ min: 0, max: 12, noNaN: true })),
);
const limit: fc.Arbitrary<CaseLimit> = fc.oneof(
  fc.record({
    measure: fc.constantFrom(...AMOUNT_MEASURES),
    value: fc.oneof(fc.constant(1e-6), fc.double({ min: 0.001, max: 5000, noNaN: true })),
    weights,
  }),
  fc.record({
    measure: fc.constantFrom('months' as const, 'days' as const),
    value: fc.integer({ min: 0, max: 100 }),
  }),
  fc.record({ measure: fc.constant('date' as const), value: date }),
);
const limits = fc.array(limit, { minLength: 1, maxLength: 3 });

const item = (id: string): fc.Arbitrary<CaseItem> =>
  fc.record({
    id: fc.constant(id),
    warnDays: fc.nat(40),
    leadDays: fc.nat(10),
    limits,
    severe: fc.option(
      fc.record({
        classes: fc.array(fc.constantFrom(...USE_CLASSES), { minLength: 1, maxLength: 3 }),
        measure: fc.constantFrom(...AMOUNT_MEASURES),
        share: fc.double({ min: 0, max: 1, noNaN: true }),
        basis: fc.constantFrom('limit' as const, 'used' as const),
        limits,
      }),
    ),
    baseline: fc.option(
      fc.record({ date, minute, odometerKm: fc.option(odometer), complete: fc.boolean() }),
    ),
  });

/** A car's case of any kind, with up to 40 entries on 61 days. */
export const arbitraryCase: fc.Arbitrary<CarCase> = fc.record({
  car: fc.record({
    id: fc.constant('car'),
    odoDigits: fc.option(fc.constantFrom(4, 5, 6)),
    odoUnit: fc.constantFrom('km' as const, 'mi' as const),
    hemisphere: fc.constantFrom('N' as const, 'S' as const, null),
    roadKmh: fc.option(fc.constantFrom(30, 45)),
  }),
  asOf: date,
  entries: fc.array(entry, { maxLength: 40 }),
  storage: fc.array(
    fc.record({ id: fc.string({ minLength: 1, maxLength: 3 }), start: date, end: fc.option(date) }),
    { maxLength: 3 },
  ),
  planned: fc.array(
    fc.record({
      id: fc.string({ minLength: 1, maxLength: 3 }),
      start: fc.oneof(date, soon),
      end: fc.option(fc.oneof(date, soon)),
      useClass: fc.constantFrom(...USE_CLASSES),
      distanceKm: amount,
      hours: amount,
      sessions: amount,
      launches: amount,
      attend: fc.constantFrom(0, 0.3, 0.9, 1),
    }),
    { maxLength: 9 },
  ),
  items: fc.tuple(item('a'), item('b')),
});
