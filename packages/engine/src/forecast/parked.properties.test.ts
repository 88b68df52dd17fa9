import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { carCase, item, km, reading, service } from '../../test/car-case.ts';
import { formatDay, parseDay } from '../calendar/day-number.ts';
import type { CaseEntry } from '../history/case.ts';
import { analyseCase } from '../wear/analyse-case.ts';
import type { ItemResult } from '../wear/result.ts';

// What holds of a car that stands still, and why. Nobody knows what a car does that is not read, so an old
// reading is never an all-clear; a reading that has not moved is one, and a lay-up is one.

const TODAY = '2026-06-15';
const ago = (days: number) => formatDay(parseDay(TODAY) - days);
const HEMISPHERES = fc.constantFrom('N' as const, 'S' as const, null);

/** Reads the same at irregular distances, from the service on. */
const still = (days: number, gaps: readonly number[], untilAgo = 0): CaseEntry[] => {
  const read = [service(ago(days), ['oil'], { odo: 30_000 })];
  let at = days;
  const entries: CaseEntry[] = [...read];
  for (const gap of gaps) {
    at -= gap;
    if (at > untilAgo) entries.push(reading(ago(at), 30_000, { id: `read ${at}` }));
  }
  entries.push(reading(ago(untilAgo), 30_000, { id: 'last' }));
  return entries;
};

type More = Parameters<typeof carCase>[3];
function judge(limit: number, entries: CaseEntry[], more: More = {}): ItemResult {
  const found = analyseCase(carCase(TODAY, entries, [item('oil', [km(limit)])], more)).items[0];
  if (found === undefined) throw new Error('the item is missing');
  return found;
}

const parked = fc.record({
  days: fc.integer({ min: 0, max: 1200 }),
  gaps: fc.array(fc.integer({ min: 1, max: 200 }), { maxLength: 12 }),
  hemisphere: HEMISPHERES,
});

describe('a car that stands still', () => {
  // what is expected of a car nothing is known of is 18 km a day, some 400 km in the three weeks of the
  // warning; its spread reaches 1,500 km with less than a tenth
  it('raises no alarm over a distance far off, as long as it is read', () => {
    fc.assert(
      fc.property(
        parked,
        fc.integer({ min: 1500, max: 50_000 }),
        ({ days, gaps, ...more }, limit) => {
          const found = judge(limit, still(days, gaps), more);
          expect(found.state).toBe('fine');
          expect(found.probablyOverdue).toBe(false);
        },
      ),
    );
  });

  it('is the less in a hurry the longer it has been read to stand', () => {
    fc.assert(
      fc.property(fc.integer({ min: 60, max: 700 }), HEMISPHERES, (days, hemisphere) => {
        const monthly = Array<number>(40).fill(30);
        const far = judge(2000, still(days, monthly), { hemisphere });
        const near = judge(2000, still(30, monthly), { hemisphere });
        expect((far.dueDate?.p50 ?? '9999') >= (near.dueDate?.p50 ?? '9999')).toBe(true);
      }),
      { numRuns: 40 },
    );
  });

  // a lay-up expects no use at all, however little is left
  it('raises no alarm in a lay-up that covers the warning, down to the last kilometre', () => {
    fc.assert(
      fc.property(
        parked,
        fc.integer({ min: 1, max: 2000 }),
        fc.integer({ min: 21, max: 300 }),
        ({ days, gaps, ...more }, limit, until) => {
          const asleep: More = { ...more, storage: [[ago(days), ago(-until)]] };
          const found = judge(limit, still(days, gaps), asleep);
          expect(found.state).toBe('fine');
          expect((found.dueDate?.p10 ?? '9999') > ago(-until)).toBe(true);
        },
      ),
    );
  });

  it('needs no reading inside a lay-up that began with one', () => {
    fc.assert(
      fc.property(parked, fc.integer({ min: 1, max: 2000 }), ({ days, ...more }, limit) => {
        const asleep: More = { ...more, storage: [[ago(days), ago(-30)]] };
        const found = judge(limit, [service(ago(days), ['oil'], { odo: 30_000 })], asleep);
        expect(found).toMatchObject({ state: 'fine', probablyOverdue: false });
      }),
    );
  });

  it('is never called fine for good where nobody reads it', () => {
    fc.assert(
      fc.property(HEMISPHERES, fc.integer({ min: 500, max: 12_000 }), (hemisphere, limit) => {
        // at 18 km a day it is used up long before
        const days = Math.ceil(limit / 18) + 400;
        const found = judge(limit, [service(ago(days), ['oil'], { odo: 30_000 })], { hemisphere });
        expect(found).toMatchObject({ state: 'dueSoon', probablyOverdue: true });
      }),
      { numRuns: 40 },
    );
  });
});
