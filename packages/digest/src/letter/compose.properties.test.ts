import { addDays } from '@quartermark/engine/calendar';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arbitraryCar } from '../../test/arbitrary-car.ts';
import type { Fact } from '../facts/fact.ts';
import { factsOfCar } from '../facts/facts-of-car.ts';
import { compose, mostLines, type Tonight } from './compose.ts';
import type { Letter } from './letter.ts';
import { type DigestSettings, SETTINGS_USUAL } from './settings.ts';
import type { Said } from './to-tell.ts';

const FIRST = '2026-06-06';
const NIGHTS = 16;
const CARS = ['c1', 'c2', 'c3'];
const days = Array.from({ length: NIGHTS }, (_, at) => addDays(FIRST, at));

/** Facts of each of some nights, of three cars. */
const manyNights = fc.tuple(
  ...days.map((today) =>
    fc
      .tuple(...CARS.map((id) => arbitraryCar(id, today)))
      .map((cars) => cars.flatMap((car) => factsOfCar(car, today))),
  ),
);

const settings: fc.Arbitrary<DigestSettings> = fc.record({
  rhythm: fc.oneof(
    fc.constant({ every: 'night' } as const),
    fc.record({ every: fc.constant('week' as const), on: fc.integer({ min: 1, max: 7 }) }),
  ),
  onlyIfNew: fc.boolean(),
  beforeEvents: fc.boolean(),
  pausedUntil: fc.constantFrom(null, '2026-06-10'),
});

type Night = { today: string; facts: readonly Fact[]; letter: Letter };

function through(nights: readonly (readonly Fact[])[], over: Partial<Tonight>): Night[] {
  let last: readonly Said[] = [];
  return nights.flatMap((facts, at) => {
    const today = days[at] as string;
    const garage = { name: 'Hollow Lane', cars: CARS };
    const member = { cars: 'all' as const };
    const letter = compose({
      today,
      facts,
      last,
      settings: SETTINGS_USUAL,
      garage,
      member,
      ...over,
    });
    if (letter === null) return [];
    last = letter.said;
    return [{ today, facts, letter }];
  });
}

/** Every fact that a letter told, with its grade and why. */
function toldOf({ today, facts, letter }: Night) {
  const grades = new Map(facts.map(({ id, grade }) => [id, grade]));
  return letter.lines.flatMap((line) =>
    line.facts.map((id) => ({ id, today, why: line.why, grade: grades.get(id) ?? Number.NaN })),
  );
}

/** Shrinking some nights of three cars takes minutes: the first counterexample has to do. */
const RUNS = { numRuns: 50, endOnFailure: true };

describe('compose(), night after night', () => {
  it('repeats nothing within a week unless it is worse, is news of a verdict, or was asked for', () => {
    fc.assert(
      fc.property(manyNights, settings, (nights, wanted) => {
        const before = new Map<string, { today: string; grade: number }>();
        for (const night of through(nights, { settings: wanted }))
          for (const told of toldOf(night)) {
            const last = before.get(told.id);
            const allowed =
              last === undefined ||
              addDays(last.today, 7) <= told.today ||
              told.grade > last.grade ||
              told.why === 'weekend' ||
              (told.id.includes('/verdict/') && told.grade !== last.grade) ||
              told.why === 'putOffOver';
            expect(allowed, `${told.id} on ${told.today}, ${told.why}`).toBe(true);
            before.set(told.id, told);
          }
      }),
      RUNS,
    );
  });

  it('tells of an event weekend on its Thursday alone', () => {
    fc.assert(
      fc.property(manyNights, (nights) => {
        const weekends = through(nights, {})
          .flatMap(toldOf)
          .filter(({ why }) => why === 'weekend');
        expect(weekends.filter(({ today }) => today !== '2026-06-18')).toEqual([]);
      }),
      RUNS,
    );
  });

  it('tells only of cars that its reader may see, also in counts and words for the rest', () => {
    fc.assert(
      fc.property(manyNights, settings, fc.subarray(CARS), (nights, wanted, cars) => {
        const seen = through(nights, { settings: wanted, member: { cars } });
        const without = nights.map((facts) => facts.filter(({ car }) => cars.includes(car)));
        const alone = through(without, { settings: wanted, garage: { name: 'Hollow Lane', cars } });
        expect(seen.map(({ letter }) => letter)).toEqual(alone.map(({ letter }) => letter));
        for (const { letter } of seen)
          expect(letter.lines.every(({ car }) => cars.includes(car))).toBe(true);
      }),
      RUNS,
    );
  });

  it('is the same letter whatever the order of facts', () => {
    fc.assert(
      fc.property(manyNights, fc.infiniteStream(fc.nat(99)), (nights, stream) => {
        const straight = through(nights, {});
        const mixed = nights.map((facts) =>
          facts
            .map((fact) => ({ fact, place: stream.next().value as number }))
            .sort((a, b) => a.place - b.place)
            .map(({ fact }) => fact),
        );
        expect(through(mixed, {}).map(({ letter }) => letter)).toEqual(
          straight.map(({ letter }) => letter),
        );
      }),
      RUNS,
    );
  });

  it('says of every laid-up or lent car only papers, battery, events, and what is not known or forbids driving', () => {
    fc.assert(
      fc.property(arbitraryCar('c1', FIRST), (car) => {
        const status = car.known?.lane.status;
        for (const fact of factsOfCar(car, FIRST)) {
          expect(status).not.toBe('sold');
          if (status === 'inUse') continue;
          expect(['urgent', 'notWorkedOut', 'verdict', 'overdue', 'dueSoon']).toContain(fact.kind);
          if (fact.kind === 'overdue' || fact.kind === 'dueSoon')
            expect(fact.line.binding === 'date' || /battery/i.test(fact.line.name)).toBe(true);
        }
      }),
      RUNS,
    );
  });
});

describe('compose() with many cars', () => {
  const fleet = (count: number) =>
    fc
      .tuple(...Array.from({ length: count }, (_, at) => arbitraryCar(`c${at}`, FIRST)))
      .map((cars) => ({
        ids: cars.map(({ id }) => id),
        facts: cars.flatMap((car) => factsOfCar(car, FIRST)),
      }));

  it.each([
    [1, 8],
    [5, 8],
    [40, 12],
    [100, 12],
  ])('has at most so many lines for %i cars: %i', (cars, most) => {
    expect(mostLines(cars)).toBe(most);
  });

  it.each([
    [5, 25],
    [17, 10],
    [40, 10],
  ])(
    'of %i keeps to its lines, counts the rest and tells it on the following nights',
    (count, numRuns) => {
      fc.assert(
        fc.property(fleet(count), ({ ids, facts: all }) => {
          const facts = all.filter(({ quiet, state }) => quiet === null && state !== 'ready');
          const garage = { name: 'Hollow Lane', cars: ids };
          const told = new Set<string>();
          let last: readonly Said[] = [];
          const today = FIRST;
          // as if it were one night after the other on the same day, so that no week passes
          for (let night = 0; night < 100; night += 1) {
            const asked = { today, facts, last, settings: SETTINGS_USUAL, garage };
            const letter = compose({ ...asked, member: { cars: 'all' } });
            if (letter === null) break;
            const shown = letter.lines.flatMap((line) => line.facts);
            const lines = letter.lines.length + (letter.rest === null ? 0 : 1);
            expect(lines).toBeLessThanOrEqual(mostLines(count));
            expect(shown.length + (letter.rest?.count ?? 0)).toBe(facts.length - told.size);
            for (const id of shown) told.add(id);
            last = letter.said;
          }
          expect(told.size).toBe(facts.length);
        }),
        { numRuns, endOnFailure: true },
      );
    },
  );
});
