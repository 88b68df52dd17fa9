import { gammaTail } from './gamma-tail.ts';
import type { MeasureFit } from './measure-fit.ts';
import { overCounts } from './over-counts.ts';
import { type Outcome, PLANNED_VARIANCE, whichTakePlace } from './which-take-place.ts';

const DAYS_PER_YEAR = 365.25;
/** Uncertainty of a level: a part that stays, a part that grows by the year, and one that sinks with use seen. */
const LEVEL_SPREAD = { fixed: 0.05, perYear: 0.06, perWeekSeen: 1.2, weeks: 4 };
const NO_OCCASIONS = 1e-12;
const NO_SPREAD = 1e-9;

/** What is expected until one day ahead. */
export type Ahead = {
  mean: number;
  variance: number;
  /** expected occasions on no calendar, with the variance of their rate */
  unplanned: number;
  rateSpread2: number;
  outcomes: Outcome[];
};

/** A weighted measure's distribution by days ahead, each day worked out once. */
export type Reach = {
  fit: MeasureFit;
  /** the event taken as attended for certain; null: none */
  attended: string | null;
  /** days not stored, cumulated by days ahead */
  activeAhead: Float64Array;
  known: Map<number, Ahead>;
  /** amounts that are not exceeded nine times in ten, by days ahead, as far as anybody asked */
  cautious: Map<number, number>;
};

export function reachOf(
  fit: MeasureFit,
  activeAhead: Float64Array,
  attended: string | null = null,
): Reach {
  return { fit, attended, activeAhead, known: new Map(), cautious: new Map() };
}

/** Mean and spread of the use from now until a day ahead; the same from a later day on. */
export function lookAhead(reach: Reach, ahead: number, after: number | null = null): Ahead {
  if (after !== null) return workOut(reach, ahead, after);
  const known = reach.known.get(ahead);
  if (known !== undefined) return known;
  const made = workOut(reach, ahead, null);
  reach.known.set(ahead, made);
  return made;
}

function workOut(
  { fit, attended, activeAhead }: Reach,
  ahead: number,
  after: number | null,
): Ahead {
  const since = after ?? 0;
  const sum = (cumulated: Float64Array) =>
    (cumulated[ahead] as number) - (cumulated[since] as number);
  const everyday = sum(fit.everyday) + (after === null ? fit.now : 0);
  const years = (activeAhead[ahead] as number) / DAYS_PER_YEAR;
  const drift = LEVEL_SPREAD.fixed + LEVEL_SPREAD.perYear * years;
  const level = drift + LEVEL_SPREAD.perWeekSeen / (fit.weeksSeen + LEVEL_SPREAD.weeks);
  let mean = everyday;
  let variance = fit.dispersion * everyday + level * everyday * everyday;
  const chances: { amount: number; chance: number }[] = [];
  for (const { event, amount } of fit.planned) {
    const days = event.daysAhead.filter(
      (day) => day <= ahead && (after === null || day > after),
    ).length;
    const share = (days / event.days) * amount;
    if (share <= 0) continue;
    if (event.id === attended) {
      mean += share;
      variance += PLANNED_VARIANCE * share * share;
    } else if (event.attend > 0) chances.push({ amount: share, chance: event.attend });
  }
  return {
    mean,
    variance,
    unplanned: sum(fit.unplanned),
    rateSpread2: 1 / fit.occasionsSeen + drift,
    outcomes: whichTakePlace(chances),
  };
}

/** Expected use until a day ahead, in the measure's unit. */
export function meanAhead(reach: Reach, ahead: number): number {
  const { mean, unplanned, outcomes } = lookAhead(reach, ahead);
  return (
    mean +
    unplanned * reach.fit.occasion +
    outcomes.reduce((sum, { weight, mean: planned }) => sum + weight * planned, 0)
  );
}

/**
 * Probability that the use until a day ahead is at least an amount.
 *
 * Everyday use and everything given which planned events take place and how many more occasions there are is
 * gamma with mean M and variance V; the number of occasions is negative binomial; the planned events are
 * enumerated. P = sum over outcomes and counts of weight x p_n x GammaSF(M^2/V, amount M/V).
 *
 * @param amount in the measure's unit; at or below 0 the answer is 1
 * @param after days ahead from which on use counts; null: from the last reading
 * @returns 0..1, never NaN
 * Source: own method, compound negative binomial and gamma; see the tails' own sources.
 */
export function chanceReached(
  reach: Reach,
  amount: number,
  ahead: number,
  after: number | null = null,
): number {
  if (amount <= 0) return 1;
  const { mean, variance, unplanned, rateSpread2, outcomes } = lookAhead(reach, ahead, after);
  const { occasion, occasionSpread2 } = reach.fit;
  let total = 0;
  const perOccasion = occasion * occasion * occasionSpread2;
  for (const outcome of outcomes) {
    const base = mean + outcome.mean;
    const spread = variance + outcome.variance;
    total +=
      outcome.weight *
      (unplanned <= NO_OCCASIONS || occasion <= 0
        ? tail(base, spread, amount)
        : overCounts(unplanned, rateSpread2, (count) =>
            tail(base + count * occasion, spread + count * perOccasion, amount),
          ));
  }
  return Math.min(1, Math.max(0, total));
}

function tail(mean: number, variance: number, amount: number): number {
  if (mean <= 0) return 0;
  if (variance <= NO_SPREAD * mean * mean) return mean >= amount ? 1 : 0;
  return gammaTail((mean * mean) / variance, (amount * mean) / variance);
}
