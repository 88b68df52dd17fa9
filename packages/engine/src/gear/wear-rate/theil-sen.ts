import { normalQuantile } from '../../probability/quantiles.ts';
import { kendallVariance, type Point } from './mann-kendall.ts';

export type SenSlope = {
  /** change of the value per unit of use; below 0 it wears */
  slope: number;
  /** value at use 0 */
  intercept: number;
  /** null where so few points cannot give one at that confidence */
  interval: { low: number; high: number } | null;
};

/**
 * The middle one of all slopes between two points, which a single bad measurement hardly moves, with an
 * interval that assumes no distribution.
 *
 * Formula: slope = median of (y_j - y_i) / (u_j - u_i) over pairs with different use, intercept = median y
 * - slope x median u. With N slopes in order and C = z sqrt(variance of Kendall's S), the interval runs
 * from the slope of rank (N - C) / 2 to the one of rank (N + C) / 2 + 1, ranks rounded outwards; where
 * those do not exist there is no interval.
 * Units: those of value, per unit of use. Errors: RangeError for a confidence outside 0..1.
 * Source: P. K. Sen, Journal of the American Statistical Association 63 (1968) 1379.
 * @param points in any order
 * @param confidence that the interval holds the slope, such as 0.8
 * @returns null where no two points differ in use
 */
export function theilSen(points: readonly Point[], confidence: number): SenSlope | null {
  const slopes = points
    .flatMap((a, index) =>
      points
        .slice(index + 1)
        .filter((b) => b.use !== a.use)
        .map((b) => (b.value - a.value) / (b.use - a.use)),
    )
    .filter(Number.isFinite)
    .sort((a, b) => a - b);
  if (slopes.length === 0) return null;
  const slope = median(slopes);
  const middle = (of: keyof Point) =>
    median(points.map((point) => point[of]).sort((a, b) => a - b));
  const reach = normalQuantile((1 + confidence) / 2) * Math.sqrt(kendallVariance(points));
  const low = slopes[Math.floor((slopes.length - reach) / 2) - 1];
  const high = slopes[Math.ceil((slopes.length + reach) / 2)];
  return {
    slope,
    intercept: middle('value') - slope * middle('use'),
    interval: low === undefined || high === undefined ? null : { low, high },
  };
}

/** The middle of a sorted list; between two middles, halfway. @throws RangeError for an empty list */
export function median(sorted: readonly number[]): number {
  const half = sorted.length / 2;
  const upper = sorted[Math.floor(half)];
  const lower = sorted[Math.ceil(half) - 1];
  if (upper === undefined || lower === undefined)
    throw new RangeError('could not give a median: an empty list, it should hold a value');
  return lower + (upper - lower) / 2;
}
