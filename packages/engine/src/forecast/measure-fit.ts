import { amountOf } from '../history/contribution.ts';
import type { AmountMeasure, UseClass } from '../log/item.ts';
import { HORIZON_DAYS } from './day-table.ts';
import { dispersionOf } from './everyday-spread.ts';
import { type Fit, type FitRule, fitStream, type Stream } from './fit-stream.ts';
import { occasionSize } from './occasion-size.ts';
import type { PlannedOccasion } from './planned-occasions.ts';
import { notYetPlanned } from './planning-habit.ts';
import type { MeterDays, Season } from './season.ts';
import { EVERYDAY_PRIOR, OCCASION_PRIOR } from './season-profile.ts';

/** A measure with its weights per class (1 where not named): what a limit counts. */
export type WeightedMeasure = {
  measure: AmountMeasure;
  weights: Partial<Record<UseClass, number>>;
};

const EVERYDAY: FitRule = { season: EVERYDAY_PRIOR, tau: 90, levelDays: 60, priorDays: 21 };
const OCCASIONS: FitRule = { season: OCCASION_PRIOR, tau: 500, levelDays: 365, priorDays: 60 };
/** Everyday use of a car nothing is known of, per active day. Simulated, common practice. */
const PRIOR_EVERYDAY = { km: 18, hours: 0.4, sessions: 0, launches: 0 } as const;
/** Occasions of a car nothing is known of: one in so many active days. */
const PRIOR_OCCASION_DAYS = 40;
/** So many occasions count as seen before there are any. */
const SEEN_PRIOR = 1.5;

/** What is expected of one weighted measure; arrays by days ahead, 0 = today. */
export type MeasureFit = {
  /** expected use since the last reading, not yet read */
  now: number;
  /** cumulated expected everyday use after today */
  everyday: Float64Array;
  /** cumulated expected number of occasions that are on no calendar yet */
  unplanned: Float64Array;
  /** mean amount of an occasion, and its squared relative spread; 0: there are none */
  occasion: number;
  occasionSpread2: number;
  /** variance of everyday use per unit of its mean */
  dispersion: number;
  weeksSeen: number;
  /** occasions seen, as far as they still count */
  occasionsSeen: number;
  /** planned events whose amount counts here */
  planned: { event: PlannedOccasion; amount: number }[];
  /** everyday use expected per awake day at this time of year */
  everydayRate: number;
  /** expected everyday use between the last reading and a later day, at most today */
  unreadUntil(day: number): number;
};

/**
 * Fits everyday use and occasions of one weighted measure.
 *
 * @param season what the forecasts of the car share
 * @returns finite values >= 0
 */
export function fitMeasure(season: Season, { measure, weights }: WeightedMeasure): MeasureFit {
  const { table, asOfDay, firstDay, contributions } = season;
  const weightOf = (useClass: UseClass) => weights[useClass] ?? 1;
  const today = asOfDay - firstDay;
  const meter = season.meterOf(measure);
  const knownUntil = meter === null ? today : (meter.readings.at(-1) as number) - firstDay;

  const everydayUse = new Float64Array(today + 1);
  const occasionUse = new Float64Array(today + 1);
  const loggedSince = new Float64Array(today + 1);
  for (const it of contributions) {
    const amount = weightOf(it.useClass) * amountOf(it, measure);
    const at = it.day - firstDay;
    if (amount <= 0 || at < 0 || at > today) continue;
    if (it.useClass !== 'road') (occasionUse[at] as number) += amount;
    else if (at <= knownUntil) (everydayUse[at] as number) += amount;
    else (loggedSince[at] as number) += amount;
  }

  const everydayStream: Stream = {
    use: everydayUse,
    from: meter === null ? 0 : (meter.readings[0] as number) - firstDay,
    until: knownUntil,
    blank: blankDays(meter, firstDay, today),
  };
  const everyday = fitStream(
    everydayStream,
    table,
    season.hemisphere,
    EVERYDAY,
    PRIOR_EVERYDAY[measure] * weightOf('road'),
  );
  const planned = season.planned
    .map((event) => ({
      event,
      amount: weightOf(event.useClass) * amountOf(event.amounts, measure),
    }))
    .filter(({ amount }) => amount > 0);
  const sizes = season.occasions
    .map((shares) =>
      shares.reduce((sum, it) => sum + weightOf(it.useClass) * amountOf(it, measure), 0),
    )
    .concat(planned.map(({ amount }) => amount))
    .filter((size) => size > 0);
  const { mean: occasion, spread2 } = occasionSize(sizes, measure, weightOf);
  const occasions = fitStream(
    { use: occasionUse, from: 0, until: today, blank: null },
    table,
    season.hemisphere,
    OCCASIONS,
    occasion / PRIOR_OCCASION_DAYS,
  );

  const unreadUntil = unreadBy(everyday, loggedSince, knownUntil, firstDay);
  return {
    now: unreadUntil(asOfDay),
    everyday: cumulate((ahead) => everyday.rate(today + ahead)),
    unplanned:
      occasion > 0
        ? cumulate(
            (ahead) =>
              (occasions.rate(today + ahead) * notYetPlanned(season.habit, ahead)) / occasion,
          )
        : new Float64Array(HORIZON_DAYS + 1),
    occasion,
    occasionSpread2: spread2,
    dispersion: dispersionOf(everydayStream, everyday, meter, firstDay),
    weeksSeen: everyday.activeDays / 7,
    occasionsSeen: SEEN_PRIOR + (occasion > 0 ? occasions.recentUse / occasion : 0),
    planned,
    everydayRate: everyday.awakeRate(wakes(season) - firstDay),
    unreadUntil,
  };
}

/** Today, or the first day after the lay-up the car is in. */
function wakes({ asOfDay, laidUpUntil }: Season): number {
  if (laidUpUntil === null) return asOfDay;
  return Math.min(laidUpUntil + 1, asOfDay + HORIZON_DAYS);
}

function blankDays(meter: MeterDays | null, firstDay: number, today: number): Uint8Array | null {
  if (meter === null || meter.blanks.length === 0) return null;
  const blank = new Uint8Array(today + 1);
  for (const { from, until } of meter.blanks)
    blank.fill(1, Math.max(0, from - firstDay), Math.max(0, until + 1 - firstDay));
  return blank;
}

/** Sum over the days ahead, by days ahead. */
function cumulate(rate: (ahead: number) => number): Float64Array {
  const sums = new Float64Array(HORIZON_DAYS + 1);
  for (let ahead = 1; ahead <= HORIZON_DAYS; ahead += 1)
    sums[ahead] = (sums[ahead - 1] as number) + rate(ahead);
  return sums;
}

/** Expected everyday use after the last reading beyond what was logged since. */
function unreadBy(
  everyday: Fit,
  logged: Float64Array,
  knownUntil: number,
  firstDay: number,
): (day: number) => number {
  return (day) => {
    let expected = 0;
    for (let at = knownUntil + 1; at <= day - firstDay; at += 1)
      expected += everyday.rate(at) - (logged[at] ?? 0);
    return Math.max(0, expected);
  };
}
