import type { CaseItem, CaseLimit } from '../history/case.ts';
import { PART_OF_INTERVAL, type SevereSwitch } from '../wear/judge-severe.ts';
import type { LastService } from '../wear/last-service.ts';
import type { LimitResult } from '../wear/result.ts';
import { chanceReached, meanAhead, type Reach, reachOf } from './chance-reached.ts';
import { HORIZON_DAYS } from './day-table.ts';
import { firstDayWith, runningChance } from './first-day.ts';
import { fitMeasure, type MeasureFit, type WeightedMeasure } from './measure-fit.ts';
import type { Season } from './season.ts';

/** When something is reached, by days ahead of today. Negative days are days that have passed. */
export type WhenReached = {
  /** probability that it is reached by the end of that day, 0..1, never falling */
  by(ahead: number): number;
  /** first day on which that probability is at least p; null beyond the horizon */
  first(p: number): number | null;
};

/** A judged limit with its rule. */
export type JudgedLimit = { rule: CaseLimit; result: LimitResult };

/** An item as judged today: what its forecast starts from. */
export type JudgedItem = {
  item: CaseItem;
  /** usual and hard-use limits */
  limits: readonly JudgedLimit[];
  /** null if it has no hard-use schedule */
  hardUse: SevereSwitch | null;
  /** null only where nothing but labels is judged */
  service: LastService | null;
};

/** Forecasts of a car's weighted measures, each fitted once. */
export type Forecasts = {
  season: Season;
  fitOf(of: WeightedMeasure): MeasureFit;
  /** the same, with an event taken as attended for certain */
  reachOf(of: WeightedMeasure, attended: string | null): Reach;
};

export function forecastsOf(season: Season): Forecasts {
  const fits = new Map<string, MeasureFit>();
  const reaches = new Map<string, Reach>();
  const fitOf = (of: WeightedMeasure) => remember(fits, keyOf(of), () => fitMeasure(season, of));
  return {
    season,
    fitOf,
    reachOf: (of, attended) =>
      remember(reaches, `${keyOf(of)} ${attended ?? ''}`, () =>
        reachOf(fitOf(of), season.table.activeAhead, attended),
      ),
  };
}

function remember<V>(known: Map<string, V>, key: string, make: () => V): V {
  const found = known.get(key);
  if (found !== undefined) return found;
  const made = make();
  known.set(key, made);
  return made;
}

const CLASSES = ['road', 'touring', 'circuit', 'strip', 'autocross'] as const;
const keyOf = ({ measure, weights }: WeightedMeasure) =>
  `${measure} ${CLASSES.map((one) => weights[one] ?? 1).join(' ')}`;

/** Something that was reached on a day, or will be on that day for certain. */
export function reachedOnDay(ahead: number): WhenReached {
  return { by: (day) => (day >= ahead ? 1 : 0), first: () => ahead };
}

/** Both are needed: the later of the two counts. */
export function bothReached(a: WhenReached, b: WhenReached): WhenReached {
  return {
    by: (ahead) => Math.min(a.by(ahead), b.by(ahead)),
    first: (p) => {
      const [one, other] = [a.first(p), b.first(p)];
      return one === null || other === null ? null : Math.max(one, other);
    },
  };
}

/**
 * When so much more of a weighted measure has been used.
 *
 * @param amount what is left, in the measure's unit
 */
export function amountReached(reach: Reach, amount: number): WhenReached {
  const known = new Map<number, number>();
  const chance = (ahead: number) => {
    const found = known.get(ahead);
    if (found !== undefined) return found;
    const made = chanceReached(reach, amount, ahead);
    known.set(ahead, made);
    return made;
  };
  const of = { chance, checkpoints: checkpointsOf(reach) };
  return {
    by: (ahead) => runningChance(of, Math.min(ahead, HORIZON_DAYS)),
    first: (p) => firstDayWith(of, p),
  };
}

/** Today, each planned event's eve and days, and the horizon. */
function checkpointsOf({ fit, attended }: Reach): number[] {
  const days = new Set([0, HORIZON_DAYS]);
  for (const { event } of fit.planned) {
    if (event.attend <= 0 && event.id !== attended) continue;
    days.add(event.startAhead - 1);
    for (let day = event.startAhead; day <= event.endAhead; day += 1) days.add(day);
  }
  return [...days].filter((day) => day >= 0 && day <= HORIZON_DAYS).sort((a, b) => a - b);
}

/**
 * What is left of an amount limit today as far as it was read, before the use expected since: a service that
 * came after the last reading without one leaves what was driven until then to the old interval.
 */
export function leftAtLastReading(
  remaining: number,
  fit: MeasureFit,
  service: LastService | null,
  season: Season,
  measure: WeightedMeasure['measure'],
): number {
  const lastReading = season.meterOf(measure)?.readings.at(-1);
  if (service === null || lastReading === undefined || service.day <= lastReading) return remaining;
  const { odometerKm, hourMeterH } = service.entry;
  if (odometerKm !== null || hourMeterH !== null) return remaining;
  return remaining + fit.unreadUntil(service.day);
}

/**
 * When hard use switches the shorter limits on; null for an item without such a schedule.
 *
 * Basis `limit`: when the hard classes' plain use reaches the threshold. Basis `used`: on the mean path, the
 * first day on which their expected sum exceeds the share of all expected use, after a tenth of the interval.
 */
export function switchReached(
  { item: { severe, limits }, hardUse, service }: JudgedItem,
  forecasts: Forecasts,
  attended: string | null = null,
): WhenReached | null {
  if (severe === null || hardUse === null) return null;
  const { sinceDay, result, used } = hardUse;
  const { season } = forecasts;
  if (sinceDay !== null) return reachedOnDay(sinceDay - season.asOfDay);
  const { measure } = severe;
  const hard = { measure, weights: onlyClasses(severe.classes) };
  const hardReach = forecasts.reachOf(hard, attended);
  if (severe.basis === 'limit') {
    const left = result.threshold - result.severeAmount;
    const fit = hardReach.fit;
    return amountReached(hardReach, leftAtLastReading(left, fit, service, season, measure));
  }
  const usual = limits.find((limit) => limit.measure === measure);
  const interval = usual !== undefined && 'weights' in usual ? usual.value : 0;
  const allReach = forecasts.reachOf({ measure, weights: {} }, attended);
  const isOn = (ahead: number) => {
    const all = used + meanAhead(allReach, ahead);
    const hardAll = result.severeAmount + meanAhead(hardReach, ahead);
    return all >= PART_OF_INTERVAL * interval && hardAll > severe.share * all;
  };
  for (let ahead = 0; ahead <= HORIZON_DAYS; ahead += 1)
    if (isOn(ahead)) return reachedOnDay(ahead);
  return NEVER;
}

const NEVER: WhenReached = { by: () => 0, first: () => null };

function onlyClasses(classes: readonly (typeof CLASSES)[number][]) {
  return Object.fromEntries(
    CLASSES.map((one) => [one, classes.includes(one) ? 1 : 0]),
  ) as WeightedMeasure['weights'];
}
