import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arbitraryEntries, arbitraryTurns } from '../../test/arbitrary-gear.ts';
import { type Drafted, entriesOf, gearBook } from '../../test/gear-book.ts';
import { buildHistory } from '../history/build-history.ts';
import { amountOf } from '../history/contribution.ts';
import { canonicalJson } from '../log/canonical-json.ts';
import type { Entry } from '../log/entry.ts';
import type { AmountMeasure } from '../log/item.ts';
import { sortEntries } from '../log/sort-entries.ts';
import { bookCase } from '../readers/book-case.ts';
import { analyseGear } from './analyse-gear.ts';
import type { GearBook } from './result.ts';

const RUNS = { numRuns: 300 };
const asOf = '2026-04-05';
const MEASURES: AmountMeasure[] = ['km', 'hours', 'sessions', 'launches'];
const FIELD = {
  km: 'distanceKm',
  hours: 'hours',
  sessions: 'sessions',
  launches: 'launches',
} as const;
const gear = fc.constantFrom(
  { kind: 'component', name: 'x', sort: 'pads', condition: 'new' } as const,
  { kind: 'component', name: 'x', sort: 'pads', condition: 'used', since: '2026-03-05' } as const,
  { kind: 'component', name: 'x', sort: 'pads', condition: 'new', since: '2026-03-05' } as const,
);
const items = [
  {
    id: 'look',
    name: 'Look',
    limits: [
      { measure: 'km' as const, value: 500, unit: 'km' as const, weights: { circuit: 3 } },
      { measure: 'sessions' as const, value: 4 },
      { measure: 'months' as const, value: 1 },
    ],
    baseline: { on: '2026-03-03' },
  },
];

const bookOf = (told: Parameters<typeof gearBook>[0]['gear'], entries: Entry[]) =>
  gearBook({ gear: told, asOf, entries, items });

function shuffled<T>(list: readonly T[], keys: readonly number[]): T[] {
  return list
    .map((value, index) => ({ value, key: keys[index % keys.length] ?? 0, index }))
    .sort((a, b) => a.key - b.key || b.index - a.index)
    .map(({ value }) => value);
}

function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (value === null || typeof value !== 'object') return [];
  return Object.values(value).flatMap(numbersIn);
}

/** What a car did, all of it. */
function carUse(book: GearBook['cars'][number], measure: AmountMeasure): number {
  const { contributions } = buildHistory(bookCase({ ...book, asOf }));
  return contributions.reduce((sum, it) => sum + amountOf(it, measure), 0);
}

describe('analyseGear() on logs of any kind', () => {
  it('gives the same answer for shuffled entries and cars', () => {
    const keys = fc.array(fc.integer(), { minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(gear, arbitraryEntries, keys, (told, entries, order) => {
        const book = bookOf(told, entries);
        const other: GearBook = {
          ...book,
          entries: shuffled(book.entries, order),
          cars: shuffled(
            book.cars.map((car) => ({ ...car, entries: shuffled(car.entries, order) })),
            order,
          ),
        };
        expect(canonicalJson(analyseGear(other))).toBe(canonicalJson(analyseGear(book)));
      }),
      RUNS,
    );
  });

  it('gives finite numbers alone, changes nothing, and never more than the cars did', () => {
    fc.assert(
      fc.property(gear, arbitraryEntries, (told, entries) => {
        const book = bookOf(told, entries);
        const before = JSON.stringify(book);
        const analysed = analyseGear(book);
        expect(JSON.stringify(book)).toBe(before);
        expect(numbersIn(analysed).every(Number.isFinite)).toBe(true);
        for (const measure of MEASURES) {
          const cars = book.cars.reduce((sum, car) => sum + carUse(car, measure), 0);
          const life = analysed.life?.[FIELD[measure]].amount ?? 0;
          expect(life).toBeGreaterThanOrEqual(0);
          expect(life).toBeLessThanOrEqual(cars + 1e-6);
        }
      }),
      RUNS,
    );
  });
});

describe('analyseGear() of sets that take turns on one car', () => {
  it('shares out what the car did since the first one went on: no more, no less', () => {
    fc.assert(
      fc.property(arbitraryTurns, ({ uses, turns }) => {
        const onCar = uses.map(([where, when, what]) => ({ ...where, ...when, ...what, car: 'a' }));
        const ordered = sortEntries(
          entriesOf(
            turns.map(([on, when, odometer]) =>
              plain({
                kind: 'odometer',
                on,
                ...when,
                odometer: odometer ?? { text: '1', unit: 'km' },
              }),
            ),
          ),
        );
        const swaps = ordered.map(({ on, time, dayOrder }) => ({ on, time, dayOrder }));
        const turn = (index: number, change: 'on' | 'off', set: string) =>
          plain({ kind: 'fit', component: set, change, car: 'a', ...swaps[index] });
        const life = (set: string, fits: Drafted[]) =>
          analyseGear(
            bookOf(
              { kind: 'component', name: set, sort: 'tyreSet', condition: 'new' },
              entriesOf([...onCar.map(plain), ...fits]).map((entry) =>
                entry.kind === 'fit' && entry.component === set
                  ? { ...entry, component: 'set' }
                  : entry,
              ),
            ),
          ).life;
        const all = swaps.flatMap((_, index) => [
          ...(index > 0 ? [turn(index, 'off', `s${index - 1}`)] : []),
          turn(index, 'on', `s${index}`),
        ]);
        const sets = swaps.map((_, index) => life(`s${index}`, all));
        const one = life('s0', [turn(0, 'on', 's0')]);
        for (const measure of MEASURES) {
          const sum = sets.reduce((total, it) => total + (it?.[FIELD[measure]].amount ?? 0), 0);
          expect(sum).toBeCloseTo(one?.[FIELD[measure]].amount ?? Number.NaN, 3);
        }
      }),
      RUNS,
    );
  });
});

/** As JSON carries it: members that are undefined are absent. */
function plain(draft: object): Drafted {
  return JSON.parse(JSON.stringify(draft));
}
