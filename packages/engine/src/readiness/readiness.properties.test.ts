import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arbitraryLog } from '../../test/arbitrary-log.ts';
import { carBook } from '../../test/car-book.ts';
import { circuitDay, DRIVER } from '../../test/ready-car.ts';
import { EVENT_SORTS } from '../log/event-sort.ts';
import type { CarAsked, EventAsked } from './asked.ts';
import { carReadiness } from './assess.ts';
import { WORK_KINDS } from './result.ts';
import { usualRequirements } from './usual-requirements.ts';
import { workList } from './work-list.ts';

const RUNS = { numRuns: 120 };

const asked: fc.Arbitrary<EventAsked> = fc.oneof(
  fc.constant(null),
  fc
    .record({ sort: fc.constantFrom(...EVENT_SORTS), days: fc.integer({ min: 0, max: 3 }) })
    .map(({ sort, days }) =>
      circuitDay({
        sort,
        start: '2026-06-15',
        end: `2026-06-${15 + days}`,
        use:
          sort === 'dragStrip'
            ? { launches: 6 }
            : sort === 'meet'
              ? undefined
              : { distance: { text: '300', unit: 'km' } },
      }),
    ),
);

function carOf({
  lines,
  ...more
}: typeof arbitraryLog extends fc.Arbitrary<infer T> ? T : never): CarAsked {
  return {
    book: carBook(lines, more),
    parts: [],
    drivers: [DRIVER],
    past: [],
    acceptances: [],
    saidIn: { distance: 'mi', volume: 'usQt' },
  };
}

/** Every number anywhere inside. */
function numbers(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(numbers);
}

describe('carReadiness() on logs of any kind', () => {
  it('is ready only where every blocking need is met, and says why of each', () => {
    fc.assert(
      fc.property(arbitraryLog, asked, (log, event) => {
        const use = event?.event.sort ?? 'road';
        const { needs, verdict } = carReadiness(carOf(log), event, usualRequirements(use));
        const blocking = needs.filter(({ weight }) => weight === 'blocking');
        expect(verdict.word === 'ready').toBe(blocking.every(({ status }) => status === 'met'));
        for (const { reason, status, remedy, id } of needs) {
          expect(reason, id).toMatch(/\S.*[.?]$/);
          expect(reason, id).not.toMatch(/NaN|undefined|null|Infinity/);
          if (status !== 'met') expect(remedy?.what, id).toBeTruthy();
        }
        expect(numbers(needs).every(Number.isFinite)).toBe(true);
        expect(new Set(needs.map(({ id }) => id)).size).toBe(needs.length);
      }),
      RUNS,
    );
  });

  it('gives the same answer in whatever order the entries stand', () => {
    fc.assert(
      fc.property(arbitraryLog, asked, (log, event) => {
        const car = carOf(log);
        const reversed = { ...car, book: { ...car.book, entries: car.book.entries.toReversed() } };
        const requirements = usualRequirements(event?.event.sort ?? 'road');
        expect(carReadiness(reversed, event, requirements)).toEqual(
          carReadiness(car, event, requirements),
        );
      }),
      RUNS,
    );
  });

  it('lists each open need once, in the order of work', () => {
    fc.assert(
      fc.property(arbitraryLog, asked, (log, event) => {
        const one = carReadiness(carOf(log), event, usualRequirements(event?.event.sort ?? 'road'));
        const work = workList([one]);
        const places = work.map((line) => WORK_KINDS.indexOf(line.work));
        expect(places).toEqual(places.toSorted((a, b) => a - b));
        const listed = work.flatMap(({ needs }) => needs).sort();
        const wanted = one.needs.flatMap(({ id, status }) => (status === 'met' ? [] : [id])).sort();
        expect(listed).toEqual(wanted);
        expect(new Set(work.map(({ id }) => id)).size).toBe(work.length);
      }),
      RUNS,
    );
  });
});
