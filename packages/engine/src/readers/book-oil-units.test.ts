import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { carBook, type Line } from '../../test/car-book.ts';
import { analyseBook } from './analyse-book.ts';

const MILE = 1.609344;
const US_QUART = 0.946352946;

type Units = { distance: 'km' | 'mi'; volume: 'l' | 'usQt' };

/** What happened at one entry: miles since the last one, and quarts poured. */
const happening = fc.record({
  miles: fc.integer({ min: 0, max: 900 }),
  quarts: fc.integer({ min: 1, max: 20 }).map((one) => one / 10),
  eighths: fc.integer({ min: 1, max: 8 }),
  is: fc.constantFrom('look', 'look', 'bottle', 'session', 'change'),
});

function book(
  all: readonly { miles: number; quarts: number; eighths: number; is: string }[],
  units: Units,
) {
  let total = 20_000;
  const lines = all.map(({ miles, quarts, eighths, is }, at): Line => {
    total += miles;
    const distance = (inMiles: number) => ({
      text: units.distance === 'mi' ? String(inMiles) : (inMiles * MILE).toFixed(6),
      unit: units.distance,
    });
    const volume = {
      text: units.volume === 'usQt' ? String(quarts) : (quarts * US_QUART).toFixed(9),
      unit: units.volume,
    };
    const on = `2026-0${1 + Math.floor(at / 10)}-${String(10 + (at % 10)).padStart(2, '0')}`;
    const frame = { on, odometer: distance(total) };
    if (is === 'bottle') return { ...frame, kind: 'oilTopUp', volume };
    if (is === 'change') return { ...frame, kind: 'oilChange', filterRenewed: true };
    if (is === 'session')
      return { ...frame, kind: 'session', use: 'circuit', distance: distance(miles / 2) };
    return { ...frame, kind: 'oilCheck', level: { how: 'fraction', fraction: eighths / 8 } };
  });
  return carBook(lines);
}

/** Every number anywhere inside. */
function numbers(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(numbers);
}

describe('analyseBook() of an oil log', () => {
  it('comes to the same in miles and quarts as in kilometres and litres', () => {
    fc.assert(
      fc.property(fc.array(happening, { maxLength: 40, size: 'max' }), (all) => {
        const metric = analyseBook(book(all, { distance: 'km', volume: 'l' })).oil;
        const customary = analyseBook(book(all, { distance: 'mi', volume: 'usQt' })).oil;
        const [a, b] = [numbers(metric), numbers(customary)];
        expect(b).toHaveLength(a.length);
        a.forEach((one, at) => {
          const other = b[at] as number;
          expect(Math.abs(one - other)).toBeLessThanOrEqual(1e-4 * Math.max(1e-3, Math.abs(one)));
        });
        expect(customary.status).toBe(metric.status);
      }),
      { numRuns: 60 },
    );
  });
});
