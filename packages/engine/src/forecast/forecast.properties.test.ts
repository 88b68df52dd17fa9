import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arbitraryCase } from '../../test/arbitrary-case.ts';
import { addDays } from '../calendar/add.ts';
import { formatDay, parseDay } from '../calendar/day-number.ts';
import type { CarCase, CaseItem, CaseLimit } from '../history/case.ts';
import { analyseCase } from '../wear/analyse-case.ts';
import type { DueDates, ItemResult } from '../wear/result.ts';

const RUNS = { numRuns: 120 };
const NEVER = '9999-12-31';
const QUANTILES = ['p10', 'p50', 'p90'] as const;

const analyse = (car: CarCase) => analyseCase(car, { toEvents: true });
/** With ids of their own, as in any calendar. */
const anyCar = arbitraryCase.map((car) => ({
  ...car,
  planned: car.planned.map((event, at) => ({ ...event, id: `event ${at}` })),
}));
const withItems = (car: CarCase, change: (item: CaseItem) => CaseItem): CarCase => ({
  ...car,
  items: car.items.map(change),
});

/** Every value of a result with the path to it. */
function leaves(value: unknown, path = ''): [string, unknown][] {
  if (value === null || typeof value !== 'object') return [[path, value]];
  return Object.entries(value).flatMap(([name, it]) => leaves(it, `${path}.${name}`));
}

const isDay = (path: string) => /(p10|p50|p90|Date|date|orderBy|service|On)$/.test(path);

function exists(day: string): boolean {
  try {
    return formatDay(parseDay(day)) === day;
  } catch {
    return false;
  }
}

function datesOf({ dueDate, limits }: ItemResult): DueDates[] {
  return [dueDate, ...limits.map(({ due }) => due)].filter((dates) => dates !== undefined);
}

describe('analyseCase() foreseeing cases of any kind', () => {
  it('says nothing but finite numbers and days that exist', () => {
    fc.assert(
      fc.property(anyCar, (car) => {
        const said = leaves(analyse(car).items);
        const wrong = said.filter(([path, value]) =>
          typeof value === 'number'
            ? !Number.isFinite(value)
            : value === undefined || (typeof value === 'string' && isDay(path) && !exists(value)),
        );
        expect(wrong).toEqual([]);
      }),
      RUNS,
    );
  });

  it('gives the same for shuffled entries and events', () => {
    fc.assert(
      fc.property(anyCar, fc.array(fc.nat(), { minLength: 50, maxLength: 50 }), (car, keys) => {
        const mixed = <T>(list: readonly T[]) =>
          list
            .map((it, at) => ({ it, key: keys[at % keys.length] as number }))
            .sort((a, b) => a.key - b.key)
            .map(({ it }) => it);
        const other = { ...car, entries: mixed(car.entries), planned: mixed(car.planned) };
        expect(JSON.stringify(analyse(other))).toBe(JSON.stringify(analyse(car)));
      }),
      RUNS,
    );
  });

  it('never has the likely day before the early one, nor the late one before the likely', () => {
    fc.assert(
      fc.property(anyCar, (car) => {
        for (const { p10, p50, p90 } of analyseCase(car).items.flatMap(datesOf)) {
          expect((p10 ?? NEVER) <= (p50 ?? NEVER)).toBe(true);
          expect((p50 ?? NEVER) <= (p90 ?? NEVER)).toBe(true);
        }
      }),
      RUNS,
    );
  });

  it('takes an item as due when the first of its limits is, and not before', () => {
    fc.assert(
      fc.property(anyCar, (car) => {
        for (const { dueDate, limits, reasonCode } of analyseCase(car).items) {
          if (dueDate === undefined || reasonCode === 'noBaseline') continue;
          for (const name of QUANTILES) {
            const days = limits.map(({ due }) => due?.[name] ?? NEVER).sort();
            expect(dueDate[name] ?? NEVER).toBe(days[0] ?? NEVER);
          }
        }
      }),
      RUNS,
    );
  });

  it('never has a larger limit fall due earlier', () => {
    fc.assert(
      fc.property(anyCar, fc.double({ min: 1.01, max: 5, noNaN: true }), (car, factor) => {
        const usual = withItems(car, (item) => ({ ...item, severe: null }));
        const larger = withItems(usual, (item) => ({
          ...item,
          limits: item.limits.map((limit) => enlarged(limit, factor)),
        }));
        const after = analyseCase(larger).items;
        analyseCase(usual).items.forEach(({ limits }, index) => {
          limits.forEach(({ due }, at) => {
            const other = after[index]?.limits[at]?.due;
            for (const name of QUANTILES)
              expect((other?.[name] ?? NEVER) >= (due?.[name] ?? NEVER)).toBe(true);
          });
        });
      }),
      RUNS,
    );
  });

  it('has a larger chance within a longer warning, of the same days', () => {
    fc.assert(
      fc.property(anyCar, fc.integer({ min: 1, max: 1500 }), (car, more) => {
        const warned = withItems(car, (item) => ({ ...item, warnDays: item.warnDays + more }));
        const later = analyseCase(warned).items;
        analyseCase(car).items.forEach(({ pDueWithinLead = 0, dueDate }, index) => {
          expect(later[index]?.pDueWithinLead ?? 0).toBeGreaterThanOrEqual(pDueWithinLead);
          expect(later[index]?.dueDate).toEqual(dueDate);
        });
      }),
      RUNS,
    );
  });

  it('calls an item due soon exactly where its early day lies within the warning and a week', () => {
    let seen = { dueSoon: 0, not: 0 };
    fc.assert(
      fc.property(anyCar, (car) => {
        analyseCase(car).items.forEach(({ state, reasonCode, dueDate }, index) => {
          if (state === 'overdue' || reasonCode === 'noBaseline') return;
          const horizon = addDays(car.asOf, (car.items[index]?.warnDays ?? 0) + 7);
          const within = (dueDate?.p10 ?? NEVER) <= horizon;
          expect(state === 'dueSoon').toBe(within);
          if (!within) expect(state).toBe(reasonCode === 'lowerBound' ? 'unknown' : 'fine');
          seen = { dueSoon: seen.dueSoon + Number(within), not: seen.not + Number(!within) };
        });
      }),
      RUNS,
    );
    expect(Math.min(seen.dueSoon, seen.not)).toBeGreaterThan(5);
  });

  it('is probably overdue only where it is not overdue, and then likely today', () => {
    fc.assert(
      fc.property(anyCar, (car) => {
        for (const { state, probablyOverdue, dueDate } of analyseCase(car).items) {
          if (probablyOverdue !== true) continue;
          expect(state).not.toBe('overdue');
          expect((dueDate?.p50 ?? NEVER) <= car.asOf).toBe(true);
        }
      }),
      RUNS,
    );
  });

  it('never uses less by the end of an event than by its eve, and never is ready past a limit', () => {
    fc.assert(
      fc.property(anyCar, (car) => {
        for (const { pReady, ready, limits, ...at } of analyse(car).items.flatMap(
          ({ atEvent }) => atEvent ?? [],
        )) {
          if (pReady === null) continue;
          for (const limit of limits) {
            expect(limit.pReached).toBeLessThanOrEqual(1 - pReady + 1e-6);
            if (!('after' in limit)) continue;
            expect(limit.after.mean).toBeGreaterThanOrEqual(limit.before.mean);
            expect(limit.after.p90).toBeGreaterThanOrEqual(limit.before.p90);
          }
          if (ready === true) expect(pReady).toBeGreaterThanOrEqual(0.9);
          if (ready !== false) expect(at.latestWorkDate).toBeNull();
          else expect(at.latestWorkDate && at.latestWorkDate >= car.asOf).toBe(true);
          if (at.earliestWorkDate !== null)
            expect(at.earliestWorkDate >= car.asOf && at.earliestWorkDate < at.date).toBe(true);
        }
      }),
      RUNS,
    );
  });
});

function enlarged(limit: CaseLimit, factor: number): CaseLimit {
  if (limit.measure === 'date') return limit;
  if (limit.measure === 'months' || limit.measure === 'days')
    return { ...limit, value: Math.ceil(limit.value * factor) };
  return { ...limit, value: limit.value * factor };
}
