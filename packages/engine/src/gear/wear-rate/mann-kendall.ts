import { normalCdf } from '../../probability/normal.ts';

/** One measurement: use of the part up to then, and what was measured. */
export type Point = { use: number; value: number };

export type Trend = {
  /** Kendall's S: pairs that rise less pairs that fall; below 0 the values fall */
  s: number;
  variance: number;
  /** S over its standard deviation, brought nearer to 0 by one pair */
  z: number;
  /** chance of so clear a trend, or a clearer one the same way, where there is none */
  pOneSided: number;
};

/**
 * Whether values fall or rise with use, by counting pairs: no shape is assumed.
 *
 * Formula: S = sum over pairs of sign((y_j - y_i)(u_j - u_i)); z = (S -+ 1) / sqrt(variance), 0 for S = 0.
 * Units: none of its own. Errors: none; fewer than two points, or no variance, have z 0 and p 0.5.
 * Source: H. B. Mann, Econometrica 13 (1945); M. G. Kendall, Rank Correlation Methods (1975).
 * @param points in any order
 * @example mannKendall([{ use: 0, value: 8 }, { use: 4, value: 7 }, { use: 8, value: 6 }]).s // -3
 */
export function mannKendall(points: readonly Point[]): Trend {
  let s = 0;
  points.forEach((a, index) => {
    for (const b of points.slice(index + 1))
      s += Math.sign(b.value - a.value) * Math.sign(b.use - a.use);
  });
  const variance = kendallVariance(points);
  const z = variance > 0 ? (s - Math.sign(s)) / Math.sqrt(variance) : 0;
  return { s, variance, z, pOneSided: normalCdf(-Math.abs(z)) };
}

/**
 * Variance of Kendall's S where there is no trend, with ties in use, in value, or in both.
 *
 * Formula: with v(n) = n(n-1)(2n+5), t the sizes of groups equal in value and u of those equal in use,
 * (v(n) - sum v(t) - sum v(u)) / 18 + (sum t(t-1)(t-2))(sum u(u-1)(u-2)) / 9n(n-1)(n-2)
 * + (sum t(t-1))(sum u(u-1)) / 2n(n-1). Units: pairs squared. Errors: none; 0 below two points.
 * Source: M. G. Kendall, Rank Correlation Methods (1975), chapter 4.
 */
export function kendallVariance(points: readonly Point[]): number {
  const n = points.length;
  if (n < 2) return 0;
  const ties = groupSizes(points.map(({ value }) => value));
  const uses = groupSizes(points.map(({ use }) => use));
  const v = (k: number) => k * (k - 1) * (2 * k + 5);
  const pairs = (k: number) => k * (k - 1);
  const triples = (k: number) => k * (k - 1) * (k - 2);
  const main = (v(n) - total(ties, v) - total(uses, v)) / 18;
  const threes = n > 2 ? (total(ties, triples) * total(uses, triples)) / (9 * triples(n)) : 0;
  return Math.max(0, main + threes + (total(ties, pairs) * total(uses, pairs)) / (2 * pairs(n)));
}

function groupSizes(values: readonly number[]): number[] {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts.values()];
}

function total(sizes: readonly number[], of: (size: number) => number): number {
  return sizes.reduce((sum, size) => sum + of(size), 0);
}
