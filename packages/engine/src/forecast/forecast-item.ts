import { formatDay, LAST_DAY } from '../calendar/day-number.ts';
import type { LastService } from '../wear/last-service.ts';
import {
  type DueDates,
  type Expectation,
  isAmountLimit,
  type LimitResult,
} from '../wear/result.ts';
import { roundAmount } from '../wear/round-amount.ts';
import { HORIZON_DAYS } from './day-table.ts';
import type { Forecasts, JudgedItem, JudgedLimit } from './forecasts.ts';
import { leftAtLastReading, limitReached, switchReached } from './limit-reached.ts';
import type { WeightedMeasure } from './measure-fit.ts';
import type { WhenReached } from './when-reached.ts';

export type ItemForecast = {
  /** in the order in which they were given, with their dates */
  limits: LimitResult[];
  dueDate: DueDates;
  pDueWithinLead: number;
  probablyOverdue: boolean;
  binding: string | null;
  expects: Expectation | null;
};

const LIKELY = 0.5;
const QUANTILES = { p10: 0.1, p50: LIKELY, p90: 0.9 } as const;

/**
 * Says of one item when it falls due: of each limit, and of all together, the days by which it is reached
 * with a probability of 0.1, 0.5 and 0.9.
 *
 * Limits share their driver, so the item's day is the earliest of its limits' days; a hard-use limit counts
 * from the day its switch is reached. What runs out first is the limit with the earliest likely day, then
 * the earliest early day, then the larger used fraction.
 *
 * @param judged the item as judged today
 * @param horizonDays days ahead within which it is called due soon
 * @returns what is said, and the chance that it is due within the horizon as it is, not rounded: a state
 *   must not differ from the early day by a millionth
 */
export function forecastItem(
  judged: JudgedItem,
  horizonDays: number,
  forecasts: Forecasts,
): { forecast: ItemForecast; chance: number } {
  const { limits, service } = judged;
  const { asOfDay } = forecasts.season;
  const switchedOn = switchReached(judged, forecasts);
  const each = limits.map((limit) => limitReached(limit, switchedOn, service, forecasts));
  const days = each.map((when) => datesOf(when));
  const first = (name: keyof DueDates) => earliest(days.map((it) => it[name]));
  const all = { p10: first('p10'), p50: first('p50'), p90: first('p90') };
  const by = (ahead: number) => Math.max(0, ...each.map((when) => when.by(ahead)));
  const within = by(horizonDays);
  const binding = runsOutFirst(limits, days);
  const rule = limits[binding]?.rule;
  const forecast = {
    limits: limits.map(({ rule: own, result }, index) => ({
      ...result,
      ...(isAmountLimit(result) &&
        'weights' in own &&
        expectedNow(own, result, service, forecasts)),
      due: asDates(days[index] as Days, asOfDay),
    })),
    dueDate: asDates(all, asOfDay),
    pDueWithinLead: roundAmount(within),
    probablyOverdue: by(0) >= LIKELY,
    binding: nameOf(limits[binding]?.result),
    expects:
      rule !== undefined && 'weights' in rule ? expectationOf(rule, all.p50, forecasts) : null,
  };
  return { forecast, chance: within };
}

type Days = { p10: number | null; p50: number | null; p90: number | null };

function datesOf(when: WhenReached): Days {
  return {
    p10: when.first(QUANTILES.p10),
    p50: when.first(QUANTILES.p50),
    p90: when.first(QUANTILES.p90),
  };
}

function asDates({ p10, p50, p90 }: Days, asOfDay: number): DueDates {
  const date = (ahead: number | null) =>
    ahead === null ? null : formatDay(Math.min(LAST_DAY, asOfDay + ahead));
  return { p10: date(p10), p50: date(p50), p90: date(p90) };
}

function earliest(days: readonly (number | null)[]): number | null {
  const known = days.filter((day) => day !== null);
  return known.length === 0 ? null : Math.min(...known);
}

/** Index of the limit that runs out first; -1 without limits. */
function runsOutFirst(limits: readonly JudgedLimit[], days: readonly Days[]): number {
  const far = (day: number | null | undefined) => day ?? Number.POSITIVE_INFINITY;
  const order = limits.map((_, index) => index);
  const [first = -1] = order.sort((a, b) => {
    const [one, other] = [days[a], days[b]];
    return (
      compare(far(one?.p50), far(other?.p50)) ||
      compare(far(one?.p10), far(other?.p10)) ||
      compare(fractionOf(limits[b]), fractionOf(limits[a]))
    );
  });
  return first;
}

function compare(a: number, b: number): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function fractionOf(limit: JudgedLimit | undefined): number {
  return limit?.result.fraction ?? 0;
}

function nameOf(result: LimitResult | undefined): string | null {
  if (result === undefined) return null;
  return result.severe ? `${result.measure}:severe` : result.measure;
}

function expectedNow(
  rule: WeightedMeasure,
  { accrued, remaining }: { accrued: number; remaining: number },
  service: LastService | null,
  forecasts: Forecasts,
): { accruedNow: number; remainingNow: number } {
  const fit = forecasts.fitOf(rule);
  const left = leftAtLastReading(remaining, fit, service);
  const unread = Math.max(0, fit.now - (left - remaining));
  return {
    accruedNow: roundAmount(accrued + unread),
    remainingNow: roundAmount(remaining - unread),
  };
}

function expectationOf(
  rule: WeightedMeasure,
  likely: number | null,
  { season, fitOf }: Forecasts,
): Expectation {
  const fit = fitOf(rule);
  const until = Math.min(HORIZON_DAYS, Math.max(0, likely ?? HORIZON_DAYS));
  return {
    measure: rule.measure,
    perWeek: roundAmount(7 * fit.everydayRate),
    perOccasion: roundAmount(fit.occasion),
    moreLikely: roundAmount(fit.unplanned[until] as number),
    planned: fit.planned.filter(({ event }) => event.startAhead <= until).length,
    laidUpUntil: season.laidUpUntil === null ? null : formatDay(season.laidUpUntil),
  };
}
