import type { Point } from './mann-kendall.ts';
import { median, theilSen } from './theil-sen.ts';

/** A measurement with how well its kind repeats: standard deviation in the unit of the value. */
export type Measurement = Point & { sd: number };

export type RobustLine = {
  centreUse: number;
  centreValue: number;
  /** change per unit of use; below 0 it wears */
  slope: number;
  centreVariance: number;
  slopeVariance: number;
  /** of the variances */
  degrees: number;
};

/** Beyond so many standard deviations a measurement pulls with a constant force only. */
const HUBER = 1.345;
/** Median absolute deviation to standard deviation of a normal. */
const MAD_TO_SD = 1.4826;
/** The repeatability assumed counts like so many degrees of freedom. */
const PRIOR_DEGREES = 4;
const STEPS = 40;
/** Confidence of the interval that pairs of points give. */
const CONFIDENCE = 0.8;

/**
 * A straight line through measurements against use that leans on the newer and the better ones and is
 * hardly moved by a bad one.
 *
 * Formula: weights w = (s / sd_i)^2 x 2^(-(u_last - u_i) / (u_last - u_first)), s the least sd, so that the
 * oldest measurement counts half; from the Theil-Sen slope on, least squares with w x min(1, 1.345 k /
 * |residual|), k = max(s, 1.4826 median |residual|). Variance of one measurement = (4 s^2 + sum w r^2) /
 * (4 + n - 2): the repeatability assumed counts like four degrees of freedom, so two points have an
 * interval too. Where Sen's interval without a distribution is wider, variances grow to meet it.
 * Units: of value, per unit of use. Errors: none.
 * Source: P. J. Huber, Robust Statistics (1981), chapter 7; weights by age: common practice, no source.
 * @param points in any order, sd > 0
 * @returns null where use is the same, or as good as, in all points
 */
export function robustLine(points: readonly Measurement[]): RobustLine | null {
  const start = theilSen(points, CONFIDENCE);
  if (start === null) return null;
  const uses = points.map(({ use }) => use);
  const last = Math.max(...uses);
  const span = last - Math.min(...uses);
  const best = Math.min(...points.map(({ sd }) => sd));
  const fixed = points.map(({ use, sd }) => (best / sd) ** 2 * 2 ** ((use - last) / span));
  let line = { ...centre(points, fixed), slope: start.slope };
  let weights = fixed;
  for (let step = 0; step < STEPS; step += 1) {
    weights = huber(points, line, fixed, best);
    const fitted = leastSquares(points, weights);
    if (fitted === null) return null;
    line = fitted;
  }
  const residual = points.map((point) => residualOf(point, line));
  const squares = residual.reduce((sum, r, index) => sum + (weights[index] ?? 0) * r * r, 0);
  const degrees = PRIOR_DEGREES + points.length - 2;
  const one = (PRIOR_DEGREES * best ** 2 + squares) / degrees;
  const { total, spread } = sums(points, weights);
  const slopeVariance = one / spread;
  const wider = widerBy(start.interval, line.slope, slopeVariance);
  if (![one / total, slopeVariance * wider].every(Number.isFinite)) return null;
  return {
    ...line,
    centreVariance: (one / total) * wider,
    slopeVariance: slopeVariance * wider,
    degrees,
  };
}

type Straight = Pick<RobustLine, 'centreUse' | 'centreValue' | 'slope'>;

function residualOf({ use, value }: Point, { centreUse, centreValue, slope }: Straight): number {
  return value - centreValue - slope * (use - centreUse);
}

function huber(
  points: readonly Measurement[],
  line: Straight,
  fixed: readonly number[],
  best: number,
): number[] {
  const off = points.map((point) => Math.abs(residualOf(point, line)));
  const middle = median(off.toSorted((a, b) => a - b));
  const most = HUBER * Math.max(best, MAD_TO_SD * middle);
  return fixed.map((weight, index) => weight * Math.min(1, most / Math.max(off[index] ?? 0, most)));
}

function sums(points: readonly Point[], weights: readonly number[]) {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const mean = (of: keyof Point) =>
    points.reduce((sum, point, index) => sum + (weights[index] ?? 0) * point[of], 0) / total;
  const use = mean('use');
  const value = mean('value');
  const spread = points.reduce(
    (sum, point, index) => sum + (weights[index] ?? 0) * (point.use - use) ** 2,
    0,
  );
  return { total, use, value, spread };
}

function centre(points: readonly Point[], weights: readonly number[]) {
  const { use, value } = sums(points, weights);
  return { centreUse: use, centreValue: value };
}

function leastSquares(points: readonly Point[], weights: readonly number[]): Straight | null {
  const { use, value, spread } = sums(points, weights);
  const slope =
    points.reduce(
      (sum, point, index) =>
        sum + (weights[index] ?? 0) * (point.use - use) * (point.value - value),
      0,
    ) / spread;
  return Number.isFinite(slope) ? { centreUse: use, centreValue: value, slope } : null;
}

/** By how much variances must grow so that the line's own interval is as wide as Sen's. */
function widerBy(
  interval: { low: number; high: number } | null,
  slope: number,
  variance: number,
): number {
  if (interval === null) return 1;
  const half = Math.max(interval.high - slope, slope - interval.low);
  const own = 1.2815515655446004 * Math.sqrt(variance);
  return half > own ? (half / own) ** 2 : 1;
}
