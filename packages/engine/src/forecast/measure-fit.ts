import { amountOf } from '../history/contribution.ts';
import type { AmountMeasure, UseClass } from '../log/item.ts';
import { HORIZON_DAYS } from './day-table.ts';
import { type Fit, type FitRule, fitStream, type Stream } from './fit-stream.ts';
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
/** Occasions of a car nothing is known of: one in so many active days, and what it amounts to. */
const PRIOR_OCCASION_DAYS = 40;
const PRIOR_OCCASION = {
  km: { useClass: 'circuit', amount: 160 },
  hours: { useClass: 'circuit', amount: 1.6 },
  sessions: { useClass: 'circuit', amount: 4 },
  launches: { useClass: 'strip', amount: 6 },
} as const;
/** Weight and squared relative spread of the prior on an occasion's size. */
const SIZE_PRIOR = { weight: 3, spread2: 0.35 ** 2 };
/** The same for 28-day blocks of everyday use. */
const BLOCK_DAYS = 28;
const BLOCK_PRIOR = { weight: 4, spread2: 0.49 };
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
  const occasion =
    sizes.length > 0
      ? sizes.reduce((sum, size) => sum + size, 0) / sizes.length
      : priorOccasion(measure, weightOf);
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
    occasionSpread2: spread2(sizes, occasion),
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

function priorOccasion(measure: AmountMeasure, weightOf: (useClass: UseClass) => number): number {
  const onRoadToo = measure === 'km' || measure === 'hours';
  if (onRoadToo && weightOf('road') > 0) return 0;
  const { useClass, amount } = PRIOR_OCCASION[measure];
  return amount * weightOf(useClass);
}

function spread2(sizes: readonly number[], mean: number): number {
  if (mean <= 0) return 0;
  const squares = sizes.reduce((sum, size) => sum + (size / mean - 1) ** 2, 0);
  return (SIZE_PRIOR.weight * SIZE_PRIOR.spread2 + squares) / (SIZE_PRIOR.weight + sizes.length);
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

/**
 * Variance of everyday use per unit of its mean (quasi-Poisson), from blocks of 28 days or more that end at
 * readings, or of 28 days where the log alone tells; shrunk to a squared relative spread of 0.49 a block.
 */
function dispersionOf(
  { use, from, until }: Stream,
  fit: Fit,
  meter: MeterDays | null,
  firstDay: number,
): number {
  const { longRun } = fit;
  let squares = 0;
  let blocks = 0;
  let start = from;
  const close = (end: number) => {
    if (end - start < BLOCK_DAYS) return;
    const expected = longRun * fit.seasonalDays(start, end);
    let seen = 0;
    for (let at = start + 1; at <= end; at += 1) seen += use[at] as number;
    if (expected > 0) {
      squares += (seen - expected) ** 2 / expected;
      blocks += 1;
    }
    start = end;
  };
  if (meter === null) for (let end = from + BLOCK_DAYS; end <= until; end += BLOCK_DAYS) close(end);
  else for (const day of meter.readings) close(day - firstDay);
  const prior = BLOCK_PRIOR.weight * BLOCK_PRIOR.spread2 * BLOCK_DAYS * longRun;
  return (prior + squares) / (BLOCK_PRIOR.weight + blocks);
}
