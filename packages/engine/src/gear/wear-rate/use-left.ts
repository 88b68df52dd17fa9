import type { Band, UseLeft, WearLine } from './result.ts';

/**
 * The likely value after so much further use, and the bounds that hold it eight times in ten.
 *
 * Formula: value = centreValue - rate (u - centreUse), u = nowUse + further; variance = centreVariance +
 * rateVariance (u - centreUse)^2 + driftPerUse (u - lastUse); bounds = value -+ reach x its square root.
 * Nothing wears below 0. Units: mm or g; use in the line's basis. Errors: none.
 * Source: textbook prediction of a straight line; the drift is common practice, no source.
 * @param further use from now on, 0 or more
 */
export function valueAfter(line: WearLine, further: number): Band {
  const use = line.nowUse + further;
  const likely = line.centreValue - line.rate * (use - line.centreUse);
  const off = line.reach * Math.sqrt(varianceAt(line, use));
  const floor = (value: number) => Math.max(0, value);
  return { likely: floor(likely), low: floor(likely - off), high: floor(likely + off) };
}

function varianceAt(line: WearLine, use: number): number {
  return (
    line.centreVariance +
    line.rateVariance * (use - line.centreUse) ** 2 +
    line.driftPerUse * Math.max(0, use - line.lastUse)
  );
}

/**
 * Further use until a minimum is reached.
 *
 * Formula: likely = (value now - minimum) / rate. The bounds of `valueAfter()` meet the minimum where
 * (m - rate d)^2 = reach^2 (v0 + v1 d + v2 d^2), m = value now - minimum and v the variance's terms in d:
 * a quadratic whose roots are the least and the most use left. Where the rate cannot be told from 0 the
 * greater root does not exist: the most is open. Units: use in the line's basis. Errors: none.
 * Source: E. C. Fieller, Journal of the Royal Statistical Society B 16 (1954) 175.
 * @param minimum in the unit of the line
 */
export function useLeft(line: WearLine, minimum: number): UseLeft {
  const ahead = line.nowUse - line.centreUse;
  const margin = line.centreValue - line.rate * ahead - minimum;
  const squared = line.reach ** 2;
  const a = line.rate ** 2 - squared * line.rateVariance;
  const b = 2 * margin * line.rate + squared * (2 * line.rateVariance * ahead + line.driftPerUse);
  const c = margin ** 2 - squared * varianceAt(line, line.nowUse);
  const likely = line.rate > 0 ? quantity(margin / line.rate) : null;
  if (margin <= 0) return { likely: 0, low: 0, high: c >= 0 ? 0 : greater(a, b, c) };
  // below 0, so 0, where the minimum lies inside of the bounds already
  const low = quantity((2 * c) / (b + root(a, b, c)));
  const high = greater(a, b, c);
  return {
    likely,
    low: likely === null ? low : Math.min(low, likely),
    high: high === null || likely === null ? high : Math.max(high, likely),
  };
}

/** The greater root of a d^2 - b d + c; null where it does not exist. */
function greater(a: number, b: number, c: number): number | null {
  if (a <= 0) return null;
  const most = (b + root(a, b, c)) / (2 * a);
  return Number.isFinite(most) ? Math.max(0, most) : null;
}

function root(a: number, b: number, c: number): number {
  return Math.sqrt(Math.max(0, b * b - 4 * a * c));
}

const MOST = 1e9;

function quantity(use: number): number {
  return Number.isFinite(use) ? Math.min(MOST, Math.max(0, use)) : MOST;
}
