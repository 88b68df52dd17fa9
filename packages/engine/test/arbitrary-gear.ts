import fc from 'fast-check';
import { formatDay, parseDay } from '../src/calendar/day-number.ts';
import type { Entry } from '../src/log/entry.ts';
import { type Drafted, entriesOf, km } from './gear-book.ts';

// Few days, so that much falls on the same one; fits that contradict each other; cars that are read,
// or not, and sometimes backwards.

const START = parseDay('2026-03-01');
const on = fc.integer({ min: 0, max: 40 }).map((day) => formatDay(START + day));
const place = fc.oneof(
  fc.constant({}),
  fc.record({ time: fc.constantFrom('08:00', '12:00', '16:00') }),
  fc.record({ dayOrder: fc.constantFrom('beforeDriving' as const, 'afterDriving' as const) }),
);
const car = fc.constantFrom('a', 'b', 'c');
const odometer = fc.option(fc.integer({ min: 1000, max: 4000 }).map(km), { nil: undefined });
const at = fc.record({ on, car, odometer });

const use = fc.oneof(
  fc.record({
    kind: fc.constant('session' as const),
    use: fc.constantFrom('circuit' as const, 'autocross' as const),
    sessions: fc.integer({ min: 0, max: 5 }),
    tyreSet: fc.constantFrom(undefined, 'set'),
  }),
  fc.record({
    kind: fc.constant('drive' as const),
    use: fc.constantFrom('road' as const, 'touring' as const),
    distance: fc.option(fc.integer({ min: 0, max: 300 }).map(km), { nil: undefined }),
  }),
  fc.record({
    kind: fc.constant('strip' as const),
    passes: fc.array(fc.constant({}), { minLength: 1, maxLength: 4 }),
  }),
);
const aboutTheSet = fc.oneof(
  fc.record({
    kind: fc.constant('fit' as const),
    component: fc.constant('set'),
    change: fc.constantFrom('on' as const, 'off' as const, 'moved' as const),
    condition: fc.constantFrom(undefined, undefined, 'new' as const, 'used' as const),
    bedding: fc.constantFrom(undefined, 'firstSession' as const, 'notBedded' as const),
  }),
  fc.record({
    kind: fc.constant('measure' as const),
    component: fc.constant('set'),
    dateCode: fc.constantFrom(undefined, '0120', '129'),
    pads: fc.constant([
      { corner: 'frontLeft' as const, inner: { text: '8', unit: 'mm' as const } },
    ]),
  }),
  fc.record({
    kind: fc.constant('service' as const),
    gear: fc.constant('set'),
    items: fc.constantFrom(['look'], ['look', 'other']),
    historyComplete: fc.boolean(),
  }),
);
const reading = fc.record({
  kind: fc.constant('odometer' as const),
  odometer: fc.integer({ min: 1000, max: 4000 }).map(km),
});

/** Entries of a set and the cars it meets, some removed; ordinals are their places. */
export const arbitraryEntries: fc.Arbitrary<Entry[]> = fc
  .array(fc.tuple(at, place, fc.oneof(use, aboutTheSet, reading), fc.nat(9)), { maxLength: 30 })
  .map((parts) =>
    entriesOf(
      parts.map(([where, when, what, dice]): Drafted => {
        const told = { ...where, ...when, ...what, removed: dice === 0 };
        // what the schema leaves out must be absent, not undefined
        return JSON.parse(JSON.stringify(told));
      }),
    ),
  );

/** Days on which one set goes off a car and the next one on, and what the car did. */
export const arbitraryTurns = fc.record({
  uses: fc.array(fc.tuple(at, place, use), { maxLength: 25 }),
  turns: fc.array(fc.tuple(on, place, odometer), { minLength: 1, maxLength: 6 }),
});
