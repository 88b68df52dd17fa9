import { formatDay, parseDay } from '../calendar/day-number.ts';
import { dueDayOf } from '../wear/judge-calendar.ts';
import type { LastService } from '../wear/last-service.ts';
import {
  type AmountLimitResult,
  type AtEvent,
  type AtEventLimit,
  type CalendarLimitResult,
  isAmountLimit,
} from '../wear/result.ts';
import { roundAmount } from '../wear/round-amount.ts';
import { chanceReached, meanAhead, type Reach } from './chance-reached.ts';
import { HORIZON_DAYS } from './day-table.ts';
import type { Forecasts, JudgedItem, JudgedLimit } from './forecasts.ts';
import { leftAtLastReading, limitReached, switchReached } from './limit-reached.ts';
import type { PlannedOccasion } from './planned-occasions.ts';

/** So sure it must be that nothing runs out before the event is over. Common practice, no source. */
const READY = 0.9;
const EARLY = 1 - READY;
const BISECTIONS = 45;
/** Days between the work and the event, for what the work brings to light. */
const BUFFER_DAYS = 1;

/**
 * Says of one item whether it lasts until the end of an event, and if not, when the work is to be done.
 *
 * The event itself is taken as attended; other planned events keep their chances. A limit is reached with
 * P = P(use until the last day >= what is left); hard-use limits need their switch too; a day of the calendar
 * is valid through that day. Ready: 1 - max P >= 0.90, unknown where that rests on a lower bound.
 *
 * @param judged the item as judged today
 * @param early the civil date on which it could fall due; null beyond the horizon
 * @param event one that is not over
 */
export function projectToEvent(
  judged: JudgedItem,
  early: string | null,
  event: PlannedOccasion,
  forecasts: Forecasts,
): AtEvent {
  const { item, limits, service } = judged;
  const { asOfDay } = forecasts.season;
  const end = Math.min(HORIZON_DAYS, event.endAhead);
  const switchedOn = switchReached(judged, forecasts, event.id);
  const each = limits.map((limit): AtEventLimit => {
    const { result } = limit;
    const common = { measure: result.measure, severe: result.severe };
    if (!isAmountLimit(result) || !('weights' in limit.rule)) {
      const { dueDate } = result as CalendarLimitResult;
      // the last day itself is still valid
      const over = asOfDay + event.endAhead > parseDay(dueDate);
      const inForce = result.severe && switchedOn !== null ? switchedOn.by(end) : 1;
      return { ...common, dueDate, pReached: over ? roundAmount(inForce) : 0 } as AtEventLimit;
    }
    const pReached = limitReached(limit, switchedOn, service, forecasts, event.id).by(end);
    return {
      ...common,
      limit: result.limit,
      ...amountsAt(forecasts.reachOf(limit.rule, event.id), result, service, event),
      pReached: roundAmount(pReached),
    } as AtEventLimit;
  });
  const pReady = 1 - Math.max(0, ...each.map(({ pReached }) => pReached));
  const unknown = limits.some(({ result }) => !result.known);
  const ready = pReady < READY ? false : unknown ? null : true;
  const days = {
    date: formatDay(asOfDay + event.startAhead),
    endDate: formatDay(asOfDay + event.endAhead),
  };
  const head = { id: event.id, ...days, pReady: roundAmount(pReady), ready, limits: each };
  if (ready !== false)
    return { ...head, latestWorkDate: null, orderBy: null, feasible: true, earliestWorkDate: null };
  const eve = event.startAhead - BUFFER_DAYS;
  const latest = Math.max(0, early === null ? eve : Math.min(eve, parseDay(early) - asOfDay));
  const earliest = earliestWork(limits, event, end, forecasts);
  return {
    ...head,
    latestWorkDate: formatDay(asOfDay + latest),
    orderBy: formatDay(asOfDay + latest - item.leadDays),
    feasible: latest >= item.leadDays,
    earliestWorkDate: earliest === null ? null : formatDay(asOfDay + earliest),
  };
}

function amountsAt(
  reach: Reach,
  { accrued, remaining }: AmountLimitResult,
  service: LastService | null,
  event: PlannedOccasion,
) {
  // what was driven before a service that came after the last reading counts to the old interval
  const before = leftAtLastReading(remaining, reach.fit, service) - remaining;
  const at = (ahead: number) => ({
    mean: roundAmount(accrued + Math.max(0, meanAhead(reach, ahead) - before)),
    p90: roundAmount(accrued + Math.max(0, cautiousAmount(reach, ahead) - before)),
  });
  const eve = at(Math.min(HORIZON_DAYS, Math.max(0, event.startAhead - 1)));
  const end = at(Math.min(HORIZON_DAYS, event.endAhead));
  return { before: eve, after: { ...end, p90: Math.max(eve.p90, end.p90) } };
}

/** What is said of an item that was never done: nothing. */
export function notOnRecordAt(
  { id, startAhead, endAhead }: PlannedOccasion,
  asOfDay: number,
): AtEvent {
  return {
    id,
    date: formatDay(asOfDay + startAhead),
    endDate: formatDay(asOfDay + endAhead),
    pReady: null,
    ready: null,
    limits: [],
    latestWorkDate: null,
    orderBy: null,
    feasible: true,
    earliestWorkDate: null,
  };
}

/** The amount not exceeded nine times in ten; the same for every item that counts the same. */
function cautiousAmount(reach: Reach, ahead: number): number {
  const known = reach.cautious.get(ahead);
  if (known !== undefined) return known;
  const made = amountAt(reach, ahead, EARLY);
  reach.cautious.set(ahead, made);
  return made;
}

/** The amount that is reached with probability p, by bisection. */
function amountAt(reach: Reach, ahead: number, p: number): number {
  let high = Math.max(1e-6, meanAhead(reach, ahead));
  for (let i = 0; i < BISECTIONS && chanceReached(reach, high, ahead) >= p; i += 1) high *= 2;
  let low = 0;
  for (let i = 0; i < BISECTIONS; i += 1) {
    const middle = (low + high) / 2;
    if (chanceReached(reach, middle, ahead) >= p) low = middle;
    else high = middle;
  }
  return high;
}

/**
 * First day on which a service would last until the end of the event by the usual limits; null where the
 * interval is too short even for work on the eve.
 */
function earliestWork(
  limits: readonly JudgedLimit[],
  event: PlannedOccasion,
  end: number,
  forecasts: Forecasts,
): number | null {
  const { asOfDay } = forecasts.season;
  const usual = limits.filter(({ result, rule }) => !result.severe && rule.measure !== 'date');
  const lasts = (work: number) =>
    usual.every(({ rule }) => {
      if ('weights' in rule)
        return chanceReached(forecasts.reachOf(rule, event.id), rule.value, end, work) <= EARLY;
      return dueDayOf(rule, asOfDay + work) >= asOfDay + event.endAhead;
    });
  let high = Math.min(HORIZON_DAYS, event.startAhead - 1);
  if (high < 0 || !lasts(high)) return null;
  let low = -1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (lasts(middle)) high = middle;
    else low = middle;
  }
  return high;
}
