import { parseDay } from '../calendar/day-number.ts';
import type { CaseLimit } from '../history/case.ts';
import { USE_CLASSES, type UseClass } from '../log/item.ts';
import { PART_OF_INTERVAL } from '../wear/judge-severe.ts';
import type { LastService } from '../wear/last-service.ts';
import { isAmountLimit, type LimitResult } from '../wear/result.ts';
import { meanAhead, type Reach } from './chance-reached.ts';
import { HORIZON_DAYS } from './day-table.ts';
import type { Forecasts, JudgedItem, JudgedLimit } from './forecasts.ts';
import type { MeasureFit, WeightedMeasure } from './measure-fit.ts';
import { amountReached, bothReached, reachedOnDay, type WhenReached } from './when-reached.ts';

/** When one limit is reached, hard-use limits not before their switch. */
export function limitReached(
  { rule, result }: JudgedLimit,
  switchedOn: WhenReached | null,
  service: LastService | null,
  forecasts: Forecasts,
  attended: string | null = null,
): WhenReached {
  const own = reachedAlone(rule, result, service, forecasts, attended);
  return result.severe && switchedOn !== null ? bothReached(own, switchedOn) : own;
}

function reachedAlone(
  rule: CaseLimit,
  result: LimitResult,
  service: LastService | null,
  forecasts: Forecasts,
  attended: string | null,
): WhenReached {
  const { season } = forecasts;
  if (!isAmountLimit(result) || !('weights' in rule)) {
    const dueDay = isAmountLimit(result) ? season.asOfDay : parseDay(result.dueDate);
    return reachedOnDay(dueDay - season.asOfDay);
  }
  if (result.remaining <= 0) {
    const on = result.reachedOn === null ? season.asOfDay : parseDay(result.reachedOn);
    return reachedOnDay(on - season.asOfDay);
  }
  const reach = forecasts.reachOf(rule, attended);
  return amountReached(reach, leftAtLastReading(result.remaining, reach.fit, service));
}

/**
 * What is left of an amount limit today as far as it was read, before the use expected since: a service that
 * came after the last reading of the measure's meter, without one that stands, leaves what was driven until
 * then to the old interval.
 */
export function leftAtLastReading(
  remaining: number,
  fit: MeasureFit,
  service: LastService | null,
): number {
  return service === null ? remaining : remaining + fit.unreadUntil(service.day);
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
    return amountReached(hardReach, leftAtLastReading(left, fit, service));
  }
  const usual = limits.find((limit) => limit.measure === measure);
  const interval = usual !== undefined && 'weights' in usual ? usual.value : 0;
  const allReach = forecasts.reachOf({ measure, weights: {} }, attended);
  // what was driven before the service, unread, is none of this interval's
  const since = ({ fit }: Reach) => leftAtLastReading(0, fit, service);
  const [allBefore, hardBefore] = [since(allReach), since(hardReach)];
  const isOn = (ahead: number) => {
    const all = used + Math.max(0, meanAhead(allReach, ahead) - allBefore);
    const hardAll = result.severeAmount + Math.max(0, meanAhead(hardReach, ahead) - hardBefore);
    return all >= PART_OF_INTERVAL * interval && hardAll > severe.share * all;
  };
  for (let ahead = 0; ahead <= HORIZON_DAYS; ahead += 1)
    if (isOn(ahead)) return reachedOnDay(ahead);
  return NEVER;
}

const NEVER: WhenReached = { by: () => 0, first: () => null };

function onlyClasses(classes: readonly UseClass[]) {
  return Object.fromEntries(
    USE_CLASSES.map((one) => [one, classes.includes(one) ? 1 : 0]),
  ) as WeightedMeasure['weights'];
}
