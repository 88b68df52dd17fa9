import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arbitraryOilLog } from '../../test/arbitrary-oil-log.ts';
import { oilLog } from './oil-log.ts';

// OIL_LOGS=10000 walks ten thousand logs instead of three hundred
const RUNS = { numRuns: Number(process.env.OIL_LOGS ?? 300) };

/** Every number anywhere inside, by where it stands; null stands for one that is none. */
function numbers(value: unknown, at = 'oil'): [string, number][] {
  if (typeof value === 'number') return [[at, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, one]) => numbers(one, `${at}.${name}`));
}

const rising = (...all: number[]) =>
  all.every((one, at) => at === 0 || one >= (all[at - 1] as number));

describe('oilLog() of a log of any kind', () => {
  it('holds no number that is none, no negative rate, and no quantile that crosses another', () => {
    fc.assert(
      fc.property(arbitraryOilLog, (file) => {
        const { oil } = oilLog(file);
        const { level, roadRate, hardRate, stripPerRun, baselineRate, distanceToMin } = oil;
        expect(numbers(oil).filter(([, one]) => !Number.isFinite(one))).toEqual([]);
        const rates = [roadRate, hardRate, baselineRate, ...(stripPerRun ? [stripPerRun] : [])];
        for (const { p05, p10, p50, p90, p95 } of [level, ...rates])
          expect([p05, p10, p50, p90, p95]).toSatisfy((all: number[]) => rising(...all));
        for (const rate of rates) {
          expect(rising(0, rate.p05)).toBe(true);
          expect(rate.mean).toBeGreaterThanOrEqual(0);
          expect(rate.median).toBe(rate.p50);
        }
        for (const { p05, p50 } of [distanceToMin.road, distanceToMin.circuit])
          expect([0, p05, p50, 100_000]).toSatisfy((all: number[]) => rising(...all));
        expect([-1e-12, oil.pBelowMin, 1 + 1e-12]).toSatisfy((all: number[]) => rising(...all));
        expect([0, oil.riseProbability, 1 + 1e-12]).toSatisfy((all: number[]) => rising(...all));
        expect(oil.checkBy.km).toBe(distanceToMin.road.p05);
      }),
      RUNS,
    );
  });

  it('names only entries of the log, each at most once for one thing', () => {
    fc.assert(
      fc.property(arbitraryOilLog, (file) => {
        const { oil } = oilLog(file);
        const ids = new Set<string | number>(file.entries.map(({ id }) => id));
        const named = [
          ...oil.doubtful,
          ...oil.offProcedure,
          ...oil.moved.map(({ entry }) => entry),
          ...oil.alerts.map(({ openedAtEntry }) => openedAtEntry),
        ];
        expect(named.filter((one) => one !== 'asOf' && !ids.has(one))).toEqual([]);
        for (const { closedAtEntry } of oil.alerts.slice(0, -1))
          expect(closedAtEntry).toBeDefined();
        if (oil.lastReading?.offProcedure)
          expect(oil.offProcedure).toContain(oil.lastReading.entry);
      }),
      RUNS,
    );
  });

  it('comes to the same in whatever order its entries stand, where they carry when they were recorded', () => {
    fc.assert(
      fc.property(arbitraryOilLog, fc.infiniteStream(fc.integer()), (file, keys) => {
        const entries = file.entries
          .map((entry) => ({ entry, key: keys.next().value ?? 0 }))
          .toSorted((a, b) => a.key - b.key)
          .map(({ entry }) => entry);
        const [one, other] = [oilLog(file).oil, oilLog({ ...file, entries }).oil];
        // a note names an entry without a date by its place
        expect({ ...other, notes: other.notes.length }).toEqual({
          ...one,
          notes: one.notes.length,
        });
      }),
      RUNS,
    );
  });

  it('is not changed by a note, nor by anything else that says nothing of oil or distance', () => {
    fc.assert(
      fc.property(arbitraryOilLog, fc.integer({ min: 0, max: 500 }), (file, day) => {
        const at = new Date(Date.UTC(2024, 2, 1 + day)).toISOString().slice(0, 10);
        const note = { at, kind: 'note', id: 'more', recorded: 1e6 };
        const entries = [...file.entries, { ...note, odometerKm: undefined, condition: undefined }];
        expect(oilLog({ ...file, entries }).oil).toEqual(oilLog(file).oil);
      }),
      RUNS,
    );
  });
});
