import { logGamma, overCounts } from '@quartermark/engine/forecast';
import { describe, expect, it } from 'vitest';
import { poisson, simpson, sum } from './exact-tails.ts';

// Source: N. L. Johnson, A. W. Kemp, S. Kotz, Univariate Discrete Distributions, chapter 5: the terms of the
// negative binomial series, and its tail as an incomplete beta function (NIST Digital Library of
// Mathematical Functions, 8.17).

// mean m, squared relative spread of the rate s: size 1/s, success probability 1/(1 + m s)
const counts = [
  { mean: 0.4, spread2: 0.5 },
  { mean: 2.3, spread2: 0.12 },
  { mean: 7.5, spread2: 0.3 },
  { mean: 40, spread2: 0.09 },
  { mean: 150, spread2: 0.25 },
];
/** What the sum leaves out: the mass beyond the last count, see its own note. */
const LEFT_OUT = 1e-6;
const atLeast = (k: number) => (n: number) => (n >= k ? 1 : 0);

describe('overCounts()', () => {
  it.each(counts)(
    'sums the terms of the binomial series, $mean on average',
    ({ mean, spread2 }) => {
      const size = 1 / spread2;
      const success = 1 / (1 + mean * spread2);
      let below = 0;
      for (let k = 0; k < 3 * mean + 10; k += 1) {
        expect(Math.abs(overCounts(mean, spread2, atLeast(k)) - (1 - below))).toBeLessThan(
          LEFT_OUT,
        );
        // C(k + size - 1, k) p^size (1 - p)^k
        const logTerm =
          logGamma(k + size) -
          logGamma(size) -
          logGamma(k + 1) +
          size * Math.log(success) +
          k * Math.log(1 - success);
        below += Math.exp(logTerm);
      }
    },
  );

  // P(N >= k) = I_x(k, size) with x = m s/(1 + m s), the regularised incomplete beta function
  it.each(counts)('is the incomplete beta function, $mean on average', ({ mean, spread2 }) => {
    const size = 1 / spread2;
    const x = (mean * spread2) / (1 + mean * spread2);
    for (const k of [1, 2, 3, Math.ceil(mean), Math.ceil(2 * mean)]) {
      const density = (t: number) => t ** (k - 1) * (1 - t) ** (size - 1);
      const wanted = simpson(density, 0, x) / simpson(density, 0, 1);
      expect(Math.abs(overCounts(mean, spread2, atLeast(k)) - wanted)).toBeLessThan(2 * LEFT_OUT);
    }
  });

  it('becomes Poisson where the rate is certain', () => {
    for (const k of [0, 1, 3, 5, 12]) {
      const wanted = k === 0 ? 1 : 1 - sum(poisson(5, k - 1));
      expect(Math.abs(overCounts(5, 1e-9, atLeast(k)) - wanted)).toBeLessThan(LEFT_OUT);
    }
  });
});
