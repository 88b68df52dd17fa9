import { CONSUMPTION_SCALE_L, type OilAnswer } from '../../oil/index.ts';

/** Litres, likely and not exceeded nine times in ten. */
export type Litres = { likelyL: number; cautiousL: number };

/** What is driven before anybody is home: km on the road, km on circuits and in autocross, drag-strip runs. */
export type OilDrive = { roadKm: number; hardKm: number; runs: number };

/** Standard deviations that nine of ten of a Gaussian stay below. */
const NINE_IN_TEN = 1.2815515655446004;

/**
 * The oil that an engine takes from now until it is home: what is missing to MAX, and what it uses.
 *
 * The level is a mixture of Gaussians, each rate one of log-normals, all of the same hypotheses: where one of
 * them says more than is thought, so mostly do the others, since each rate is the road's times a ratio. They
 * are added as if they rose together: the quantiles of the sum are then the sums of the quantiles, the median
 * of the medians and the ninth decile of the ninth deciles. Engines of which that is not quite true exceed it
 * less often. What is used in doses scatters for itself, with 0.015 L of variance per litre as in the ledger;
 * that spread is added to the other as those of independent things are, by the root of the sum of squares.
 *
 * @param oil what the ledger says today; each rate that is asked for has to be measured
 * @param drive amounts >= 0
 * @returns litres, the likely first; `missing` and `used` are the parts, without the scatter
 */
export function oilAmount(
  oil: OilAnswer,
  drive: OilDrive,
): Litres & { missing: Litres; used: Litres } {
  const missing = {
    likelyL: Math.max(0, -oil.level.p50),
    cautiousL: Math.max(0, -oil.level.p10),
  };
  const used = usedOn(oil, drive);
  const likelyL = missing.likelyL + used.likelyL;
  const spread = missing.cautiousL + used.cautiousL - likelyL;
  const scatter = NINE_IN_TEN * Math.sqrt(CONSUMPTION_SCALE_L * used.likelyL);
  return { likelyL, cautiousL: likelyL + Math.hypot(spread, scatter), missing, used };
}

/** What a drive alone uses. */
export function usedOn(oil: OilAnswer, { roadKm, hardKm, runs }: OilDrive): Litres {
  const { roadRate, hardRate, stripPerRun } = oil;
  const run = stripPerRun ?? { p50: 0, p90: 0 };
  const at = (q: 'p50' | 'p90') =>
    (roadKm * roadRate[q] + hardKm * hardRate[q]) / 1000 + runs * run[q];
  return { likelyL: at('p50'), cautiousL: at('p90') };
}
