import type { CarCase } from '../history/case.ts';

/** How strongly the prior year swings, and how many days it weighs. Simulated, common practice. */
export type SeasonPrior = { swing: number; days: number };
export const EVERYDAY_PRIOR: SeasonPrior = { swing: 0.25, days: 30 };
export const OCCASION_PRIOR: SeasonPrior = { swing: 0.6, days: 120 };

/** Month of most use, 0 January to 11: July in the north, January in the south. */
const PEAK = { N: 6, S: 0 } as const;

/**
 * How use is spread over the months of a year, as a factor per month around 1.
 *
 * With x use and n days seen per month, prior p_m = 1 + swing cos(2 pi (m - peak)/12) and q = sum x /
 * sum(p n): r_m = (x_m / q + k p_m) / (n_m + k), smoothed circularly with 1/4, 1/2, 1/4. Without use, or
 * with no day seen, r = p.
 *
 * @param use weighted amount per month, >= 0
 * @param days days seen per month, >= 0
 * @param prior swing 0..1, days k > 0
 * @param hemisphere null: no prior season
 * @returns 12 factors > 0
 * Source: own method; shrinkage of a seasonal index to a prior, weights from simulation.
 */
export function seasonProfile(
  use: Float64Array,
  days: Float64Array,
  prior: SeasonPrior,
  hemisphere: CarCase['car']['hemisphere'],
): Float64Array {
  const prior12 = new Float64Array(12).map((_, month) =>
    hemisphere === null
      ? 1
      : 1 + prior.swing * Math.cos((2 * Math.PI * (month - PEAK[hemisphere])) / 12),
  );
  let used = 0;
  let expected = 0;
  for (let month = 0; month < 12; month += 1) {
    used += use[month] as number;
    expected += (prior12[month] as number) * (days[month] as number);
  }
  const level = expected > 0 ? used / expected : 0;
  const raw =
    level > 0
      ? prior12.map(
          (p, month) =>
            ((use[month] as number) / level + prior.days * p) /
            ((days[month] as number) + prior.days),
        )
      : prior12;
  return raw.map(
    (r, month) =>
      (raw[(month + 11) % 12] as number) / 4 + r / 2 + (raw[(month + 1) % 12] as number) / 4,
  );
}
