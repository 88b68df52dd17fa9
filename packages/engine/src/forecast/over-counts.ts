/** Counts beyond this mass, or beyond a tail that is as good as certain, take the last tail found. */
const LOST_MASS = 1e-6;
const CERTAIN = 1 - 1e-9;
const COUNT_MAX = 2000;

/**
 * Mean of a tail over a count that is negative binomial: sum of p_n x tail(n).
 *
 * p_0 = exp(-ln(1 + m s)/s), p_(n+1) = p_n (n + 1/s)/(n + 1) x m s/(1 + m s), with mean m and variance
 * m + s m^2.
 *
 * @param mean m > 0
 * @param spread2 s > 0, squared relative spread of the rate itself
 * @param tailOf by count, 0..1, never falling
 * @returns 0..1, within 1e-6
 * Source: a Poisson count whose rate is gamma distributed; N. L. Johnson, A. W. Kemp,
 * S. Kotz, Univariate Discrete Distributions, chapter 5.
 * @example overCounts(1, 1, (n) => (n >= 1 ? 1 : 0)) // 0.5
 */
export function overCounts(
  mean: number,
  spread2: number,
  tailOf: (count: number) => number,
): number {
  const product = mean * spread2;
  const ratio = product / (1 + product);
  let probability = Math.exp(-Math.log1p(product) / spread2);
  let mass = 0;
  let total = 0;
  for (let count = 0; ; count += 1) {
    const reached = tailOf(count);
    mass += probability;
    total += probability * reached;
    if (mass > 1 - LOST_MASS || reached > CERTAIN || count >= COUNT_MAX)
      return total + Math.max(0, 1 - mass) * reached;
    probability *= ((count + 1 / spread2) / (count + 1)) * ratio;
  }
}
