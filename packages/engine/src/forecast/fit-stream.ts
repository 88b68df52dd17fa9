import type { CarCase } from '../history/case.ts';
import type { DayTable } from './day-table.ts';
import { type SeasonPrior, seasonProfile } from './season-profile.ts';

/** Weighted use by day over the days on which it is known. */
export type Stream = {
  /** by index of the day table */
  use: Float64Array;
  /** first and last index that is known; `until` < `from`: none */
  from: number;
  until: number;
  /** 1 on days of which nothing is known: no use, no day; null where all are known */
  blank: Uint8Array | null;
};

/** Constants of a fit, chosen coarsely by simulation; the score is flat around them. */
export type FitRule = {
  season: SeasonPrior;
  /** e-folding time of the level, days */
  tau: number;
  /** days that the long-run level weighs in the level */
  levelDays: number;
  /** days that the prior weighs in the long-run level */
  priorDays: number;
};

const LONG_RUN_TAU = 365;

export type Fit = {
  /** use per active day of an average month, recent days weighing most */
  level: number;
  /** the same over the long run */
  longRun: number;
  /** exponentially weighted sum of use with the rule's tau */
  recentUse: number;
  /** days known and not stored */
  activeDays: number;
  /** use expected on a day, by index of the day table; 0 in storage */
  rate(index: number): number;
  /** use expected on that day if it were not stored */
  awakeRate(index: number): number;
  /** seasonal days between two indexes (from exclusive, until inclusive), stored and blank ones left out */
  seasonalDays(from: number, until: number): number;
};

/**
 * Fits season and level to a stream of use.
 *
 * Long-run level = (EW_365 sum y + k0 L0) / (EW_365 sum s act + k0); level = (EW_tau sum y + kL long run) /
 * (EW_tau sum s act + kL), both exponentially weighted back from the stream's last day. On days ahead for
 * which no lay-up is known the season of all days is used, scaled by f = (sum s act + k0)/(sum s_all + k0).
 *
 * @param priorLevel L0, use per active day, >= 0
 * @returns finite values >= 0
 * Source: own method; exponentially weighted Poisson rate with a gamma prior.
 */
export function fitStream(
  stream: Stream,
  table: DayTable,
  hemisphere: CarCase['car']['hemisphere'],
  rule: FitRule,
  priorLevel: number,
): Fit {
  const { use, from, until, blank } = stream;
  const { month, stored, habitual } = table;
  const monthUse = new Float64Array(12);
  const activeByMonth = new Float64Array(12);
  const allByMonth = new Float64Array(12);
  for (let at = from; at <= until; at += 1) {
    if (blank !== null && blank[at] === 1) continue;
    const m = month[at] as number;
    (monthUse[m] as number) += use[at] as number;
    (allByMonth[m] as number) += 1;
    if (stored[at] === 0) (activeByMonth[m] as number) += 1;
  }
  const season = seasonProfile(monthUse, activeByMonth, rule.season, hemisphere);
  const allSeason = seasonProfile(monthUse, allByMonth, rule.season, hemisphere);

  const fadeLong = Math.exp(-1 / LONG_RUN_TAU);
  const fade = Math.exp(-1 / rule.tau);
  let longUse = 0;
  let longDays = 0;
  let recentUse = 0;
  let recentDays = 0;
  let plainDays = 0;
  let plainAll = 0;
  let activeDays = 0;
  for (let at = from; at <= until; at += 1) {
    const known = blank === null || blank[at] === 0;
    const y = known ? (use[at] as number) : 0;
    const m = month[at] as number;
    const active = known && stored[at] === 0;
    const s = active ? (season[m] as number) : 0;
    longUse = longUse * fadeLong + y;
    longDays = longDays * fadeLong + s;
    recentUse = recentUse * fade + y;
    recentDays = recentDays * fade + s;
    plainDays += s;
    if (known) plainAll += allSeason[m] as number;
    if (active) activeDays += 1;
  }
  const longRun = (longUse + rule.priorDays * priorLevel) / (longDays + rule.priorDays);
  const level = (recentUse + rule.levelDays * longRun) / (recentDays + rule.levelDays);
  const factor = (plainDays + rule.priorDays) / (plainAll + rule.priorDays);

  const awakeRate = (index: number) => {
    const m = month[index] as number;
    return habitual[index] === 1
      ? level * factor * (allSeason[m] as number)
      : level * (season[m] as number);
  };
  return {
    level,
    longRun,
    recentUse,
    activeDays,
    rate: (index) => (stored[index] === 1 ? 0 : awakeRate(index)),
    awakeRate,
    seasonalDays: (after, last) => {
      let sum = 0;
      for (let at = after + 1; at <= last; at += 1)
        if (stored[at] === 0 && (blank === null || blank[at] === 0))
          sum += season[month[at] as number] as number;
      return sum;
    },
  };
}
