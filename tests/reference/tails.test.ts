import { gammaTail, logGamma } from '@quartermark/engine/forecast';
import { describe, expect, it, test } from 'vitest';
import data from './data/distributions.json' with { type: 'json' };
import { poisson, sum } from './exact-tails.ts';

// Sources stand in the data file beside the figures. What is worked out here by another road (sums,
// numerical integration) names its identity.

describe('gammaTail()', () => {
  // the chance that chi-square with n degrees of freedom exceeds q is Q(n/2, q/2)
  const quantiles = Object.entries(data.chiSquare).flatMap(([degrees, row]) =>
    Object.entries(row).map(([p, quantile]) => ({ degrees: Number(degrees), p, quantile })),
  );

  it.each(quantiles)(
    'is 1 - $p at the $p quantile of chi-square with $degrees degrees of freedom',
    ({ degrees, p, quantile }) => {
      expect(Math.abs(gammaTail(degrees / 2, quantile / 2) - (1 - Number(p)))).toBeLessThan(1e-12);
    },
  );

  it.each(Object.entries(data.normal))(
    'gives half of Q(1/2, z^2/2) beyond the normal quantile of %s',
    (p, z) => {
      expect(Math.abs(gammaTail(0.5, (z * z) / 2) / 2 - (1 - Number(p)))).toBeLessThan(1e-12);
    },
  );

  // of x events or fewer: Q(x + 1, mean); at the limits of a confidence c it is (1 - c)/2, and its
  // complement for x - 1
  it.each(data.poisson)('meets the exact limits of a Poisson mean at a count of $count', (row) => {
    for (const [confidence, limits] of Object.entries(row)) {
      if (typeof limits === 'number') continue;
      const [lower = 0, upper = 0] = limits;
      const outside = (1 - Number(confidence)) / 2;
      expect(Math.abs(gammaTail(row.count + 1, upper) - outside)).toBeLessThan(1e-12);
      if (row.count === 0) continue;
      expect(Math.abs(1 - gammaTail(row.count, lower) - outside)).toBeLessThan(1e-12);
    }
  });

  it.each([0.03, 0.7, 1, 3.2, 12.5, 60, 250, 1200, 2900])(
    'is the sum of Poisson probabilities below its shape, at a mean of %d',
    (mean) => {
      const width = Math.sqrt(mean);
      for (const off of [-6, -3, -1, 0, 1, 3, 6]) {
        const shape = Math.max(1, Math.round(mean + off * width));
        if (shape > 3000) continue;
        const below = sum(poisson(mean, shape - 1));
        expect(Math.abs(gammaTail(shape, mean) - below)).toBeLessThan(1e-11);
      }
    },
  );

  it('goes over to the cube root at a shape of 3,000 with a step of less than 2e-6', () => {
    for (let off = -6; off <= 6; off += 0.25) {
      const x = 3000 + off * Math.sqrt(3000);
      expect(Math.abs(gammaTail(3000, x) - gammaTail(3000 + 1e-9, x))).toBeLessThan(2e-6);
    }
  });

  it.each([3001, 4000, 10_000])(
    'keeps within 2e-6 of the Poisson sum at a shape of %d',
    (shape) => {
      for (let off = -5; off <= 5; off += 1) {
        const mean = shape + off * Math.sqrt(shape);
        const below = sum(poisson(mean, shape - 1));
        expect(Math.abs(gammaTail(shape, mean) - below)).toBeLessThan(2e-6);
      }
    },
  );

  it('falls with x, rises with the shape and stays between 0 and 1', () => {
    const shapes = [1e-9, 1e-3, 0.4, 1, 7.5, 90, 2999, 3000, 3001, 1e5, 1e9];
    for (const [index, shape] of shapes.entries()) {
      let before = 1;
      for (const factor of [1e-12, 0.01, 0.5, 0.9, 1, 1.1, 2, 50, 1e6]) {
        const tail = gammaTail(shape, factor * Math.max(1, shape));
        expect(tail).toBeGreaterThanOrEqual(0);
        expect(tail).toBeLessThanOrEqual(before);
        before = tail;
      }
      const smaller = shapes[index - 1];
      if (smaller !== undefined)
        expect(gammaTail(shape, 3)).toBeGreaterThanOrEqual(gammaTail(smaller, 3));
    }
    expect(gammaTail(2, 0)).toBe(1);
    expect(gammaTail(2, -1)).toBe(1);
    expect(gammaTail(2, Number.POSITIVE_INFINITY)).toBe(0);
  });
});

describe('logGamma()', () => {
  it('is the logarithm of a factorial', () => {
    let logFactorial = 0;
    for (let n = 1; n <= 3000; n += 1) {
      expect(Math.abs(logGamma(n) - logFactorial)).toBeLessThan(1e-13 * Math.max(1, logFactorial));
      logFactorial += Math.log(n);
    }
  });

  it('is half the logarithm of pi at a half, and meets the reflection formula', () => {
    expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.PI) / 2, 14);
    for (const x of [1e-6, 0.01, 0.2, 0.49, 0.7, 0.99])
      expect(logGamma(x) + logGamma(1 - x)).toBeCloseTo(
        Math.log(Math.PI / Math.sin(Math.PI * x)),
        12,
      );
  });
});

test('the figures compared are all there', () => {
  expect(Object.keys(data.chiSquare)).toHaveLength(19);
  expect(data.poisson).toHaveLength(35);
  expect(Object.keys(data.normal)).toHaveLength(6);
});
