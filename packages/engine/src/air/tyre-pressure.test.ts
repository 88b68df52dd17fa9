import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coldFor, gaugeAt } from './tyre-pressure.ts';

const byPair = { by: 'pressures', coldGaugePa: 180_000, hotGaugePa: 230_000 } as const;
const byHeat = { by: 'temperatures', coldK: 293.15, hotK: 353.15 } as const;

describe('coldFor()', () => {
  test('coldFor() goes by the measured pair, in absolute pressures', () => {
    const found = coldFor({ hotGaugePa: 220_000, minimumGaugePa: 150_000 }, byPair, 100_000);
    // (2.2 + 1) bar x 2.8 / 3.3 - 1
    expect(found.coldGaugePa).toBeCloseTo((320_000 * 2.8) / 3.3 - 100_000, 6);
    expect(found).toMatchObject({ hotGaugePa: 220_000, minimum: 'kept' });
    expect(found.notes).toEqual([
      expect.stringMatching(/starts out as warm/),
      expect.stringMatching(/bled hot back to the maker’s cold pressure before the road/),
    ]);
    expect(coldFor({ hotGaugePa: 230_000, minimumGaugePa: 0 }, byPair).coldGaugePa).toBeCloseTo(
      180_000,
      6,
    );
  });

  test('coldFor() never goes below the maker’s minimum: gives it, and says so and how hot it gets', () => {
    const wanted = { hotGaugePa: 230_000, minimumGaugePa: 200_000 };
    const found = coldFor(wanted, byHeat);
    expect(found.coldGaugePa).toBe(200_000);
    expect(found.wantedColdGaugePa).toBeLessThan(180_000);
    expect(found.minimum).toBe('given');
    expect(found.hotGaugePa).toBeCloseTo(
      gaugeAt({ gaugePa: 200_000, fromK: 293.15, toK: 353.15 }),
      6,
    );
    expect(found.notes[0]).toMatch(/below the maker’s minimum: the minimum is given/);
  });

  test('coldFor() takes a minimum that is not on record for unknown, never for kept', () => {
    const { minimum, notes } = coldFor({ hotGaugePa: 230_000, minimumGaugePa: null }, byHeat);
    expect(minimum).toBe('notOnRecord');
    expect(notes[0]).toMatch(/not on record: look it up, and never go below it/);
  });

  test('coldFor() undoes gaugeAt(), and keeps the minimum whatever is wanted', () => {
    const pascals = fc.integer({ min: 80_000, max: 400_000 });
    const air = fc.integer({ min: 70_000, max: 105_000 });
    const cold = fc.integer({ min: 260, max: 310 });
    const warmer = fc.integer({ min: 1, max: 100 });
    fc.assert(
      fc.property(pascals, pascals, air, cold, warmer, (gaugePa, minimumGaugePa, pa, coldK, by) => {
        const hotK = coldK + by;
        const hotGaugePa = gaugeAt({ gaugePa, fromK: coldK, toK: hotK }, pa);
        const found = coldFor(
          { hotGaugePa, minimumGaugePa },
          { by: 'temperatures', coldK, hotK },
          pa,
        );
        expect(found.wantedColdGaugePa).toBeCloseTo(gaugePa, 4);
        expect(found.coldGaugePa).toBeGreaterThanOrEqual(minimumGaugePa - 1e-4);
        expect(found.hotGaugePa).toBeGreaterThanOrEqual(hotGaugePa - 1e-4);
        const pair = { by: 'pressures', coldGaugePa: gaugePa, hotGaugePa } as const;
        const other = coldFor({ hotGaugePa, minimumGaugePa: null }, pair, pa);
        expect(other.coldGaugePa).toBeCloseTo(gaugePa, 4);
      }),
    );
  });

  test.each([
    [
      'bar for pascals below zero',
      () => coldFor({ hotGaugePa: -1, minimumGaugePa: null }, byPair),
      /hot pressure wanted of -1 Pa.*1 bar is 100,000 Pa/,
    ],
    [
      'a pair the wrong way round',
      () =>
        coldFor(
          { hotGaugePa: 2e5, minimumGaugePa: null },
          { by: 'pressures', coldGaugePa: 230_000, hotGaugePa: 180_000 },
        ),
      /hot pressure is not above the cold one/,
    ],
    [
      'no warming',
      () =>
        coldFor(
          { hotGaugePa: 2e5, minimumGaugePa: null },
          { by: 'temperatures', coldK: 300, hotK: 300 },
        ),
      /hot temperature is not above/,
    ],
    [
      'a minimum of megapascals',
      () => coldFor({ hotGaugePa: 2e5, minimumGaugePa: 2e6 }, byPair),
      /maker’s minimum of 2000000 Pa/,
    ],
    [
      'Celsius',
      () => gaugeAt({ gaugePa: 2e5, fromK: 20, toK: 353 }),
      /tyre temperature at first of 20 K/,
    ],
    [
      'a hot Celsius',
      () => gaugeAt({ gaugePa: 2e5, fromK: 290, toK: 80 }),
      /tyre temperature then of 80 K/,
    ],
    [
      'an atmosphere in hectopascals',
      () => gaugeAt({ gaugePa: 2e5, fromK: 290, toK: 350 }, 1013),
      /air pressure of 1013 Pa/,
    ],
  ] as const)('refuses %s and says how to mend it', (_, ask, words) => {
    expect(ask).toThrow(RangeError);
    expect(ask).toThrow(words);
  });
});
