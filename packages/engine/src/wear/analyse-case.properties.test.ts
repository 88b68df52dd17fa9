import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arbitraryCase } from '../../test/arbitrary-case.ts';
import { buildHistory } from '../history/build-history.ts';
import type { CarCase, CaseLimit } from '../history/case.ts';
import { analyseCase } from './analyse-case.ts';
import { isAmountLimit } from './result.ts';

const RUNS = { numRuns: 400 };

function shuffled<T>(list: readonly T[], keys: readonly number[]): T[] {
  return list
    .map((value, index) => ({ value, key: keys[index % Math.max(1, keys.length)] ?? 0, index }))
    .sort((a, b) => a.key - b.key || b.index - a.index)
    .map(({ value }) => value);
}

function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (value === null || typeof value !== 'object') return [];
  return Object.values(value).flatMap(numbersIn);
}

describe('analyseCase() on cases of any kind', () => {
  it('gives the same answer for shuffled entries', () => {
    fc.assert(
      fc.property(
        arbitraryCase,
        fc.array(fc.integer(), { minLength: 1, maxLength: 40 }),
        (car, keys) => {
          const other: CarCase = {
            ...car,
            entries: shuffled(car.entries, keys),
            storage: shuffled(car.storage, keys),
          };
          expect(JSON.stringify(analyseCase(other))).toBe(JSON.stringify(analyseCase(car)));
        },
      ),
      RUNS,
    );
  });

  it('changes nothing of the case', () => {
    fc.assert(
      fc.property(arbitraryCase, (car) => {
        const before = JSON.stringify(car);
        analyseCase(car);
        expect(JSON.stringify(car)).toBe(before);
      }),
      { numRuns: 100 },
    );
  });

  it('gives finite numbers alone, and never a negative accrual', () => {
    fc.assert(
      fc.property(arbitraryCase, (car) => {
        const analysis = analyseCase(car);
        expect(numbersIn(analysis).every(Number.isFinite)).toBe(true);
        for (const limit of analysis.items.flatMap(({ limits }) => limits)) {
          expect(limit.fraction).toBeGreaterThanOrEqual(0);
          if (!isAmountLimit(limit)) continue;
          expect(limit.accrued).toBeGreaterThanOrEqual(0);
          expect(limit.estimated).toBeLessThanOrEqual(limit.accrued);
          expect(limit.reachedOn !== null && !limit.severe).toBe(
            !limit.severe && limit.accrued >= limit.limit,
          );
          const byClass = Object.values(limit.byClass).reduce((sum, part) => sum + part, 0);
          expect(byClass).toBeCloseTo(limit.accrued, 4);
        }
      }),
      RUNS,
    );
  });

  it('never gives a larger limit the larger fraction', () => {
    fc.assert(
      fc.property(arbitraryCase, fc.integer({ min: 2, max: 9 }), (car, factor) => {
        const larger: CarCase = {
          ...car,
          items: car.items.map((item) => ({
            ...item,
            severe: null,
            limits: item.limits.map((limit) => enlarged(limit, factor)),
          })),
        };
        const usual = analyseCase({
          ...car,
          items: car.items.map((item) => ({ ...item, severe: null })),
        });
        const enlargedItems = analyseCase(larger).items;
        usual.items.forEach(({ limits }, index) => {
          limits.forEach((limit, at) => {
            const other = enlargedItems[index]?.limits[at];
            expect(other?.fraction).toBeLessThanOrEqual(limit.fraction);
          });
        });
      }),
      RUNS,
    );
  });

  it('keeps every state true to its own limits', () => {
    fc.assert(
      fc.property(arbitraryCase, (car) => {
        for (const { state, reasonCode, limits, severe } of analyseCase(car).items) {
          const inForce = limits.filter((limit) => !limit.severe || severe?.active === true);
          const over = inForce.some((limit) =>
            isAmountLimit(limit) ? limit.accrued >= limit.limit : limit.dueDate < car.asOf,
          );
          expect(state === 'overdue').toBe(over);
          expect(state === 'unknown').toBe(reasonCode !== null);
          expect(state !== null || limits.every(({ known }) => known)).toBe(true);
        }
      }),
      RUNS,
    );
  });
});

describe('buildHistory() on cases of any kind', () => {
  it('keeps readings that never fall inside a segment, in order', () => {
    fc.assert(
      fc.property(arbitraryCase, (car) => {
        const { odometer, hourMeter } = buildHistory(car);
        for (const { kept } of [odometer, hourMeter])
          kept.slice(1).forEach((point, index) => {
            const before = kept[index];
            const falls = before?.segment === point.segment && point.value < before.value;
            expect(falls).toBe(false);
            expect(point.position).toBeGreaterThanOrEqual(before?.position ?? 0);
          });
      }),
      RUNS,
    );
  });

  it('gives each interval at least what the odometer shows', () => {
    fc.assert(
      fc.property(arbitraryCase, (car) => {
        const { odometer, contributions } = buildHistory(car);
        odometer.kept.slice(1).forEach((end, index) => {
          const start = odometer.kept[index];
          if (start === undefined || start.segment !== end.segment) return;
          const inside = contributions
            .filter(({ position }) => position > start.position && position <= end.position)
            .reduce((sum, { distanceKm }) => sum + distanceKm, 0);
          expect(inside).toBeGreaterThanOrEqual(end.value - start.value - 1e-5);
        });
      }),
      RUNS,
    );
  });
});

function enlarged(limit: CaseLimit, factor: number): CaseLimit {
  return limit.measure === 'date' ? limit : { ...limit, value: limit.value * factor };
}
