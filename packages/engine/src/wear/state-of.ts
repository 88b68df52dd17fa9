import { parseDay } from '../calendar/day-number.ts';
import { type ItemResult, isAmountLimit, type LimitResult } from './result.ts';

/** Days until the owner looks again. Source: common practice, a weekly look. */
export const LOOK_AGAIN_DAYS = 7;

export type State = Pick<ItemResult, 'state' | 'reasonCode' | 'reason'>;

const LOWER_BOUND =
  'Some of the use since the last service is not in the log, so the amounts are at least this much.';
const NO_BASELINE = 'Nothing on record says when this was last done.';

/** The state of an item that was never done, as far as the log knows. */
export const NOT_ON_RECORD: State = {
  state: 'unknown',
  reasonCode: 'noBaseline',
  reason: NO_BASELINE,
};

/** Cost of being early by that of being early and being late together, 1 : 9. Common practice, no source. */
const DUE_SOON_CHANCE = 0.1;

/**
 * The state of an item; the first that applies.
 *
 * overdue: an amount limit has accrued >= value, or asOf > D. dueSoon: the chance that it is due by asOf +
 * warnDays + 7 is 0.10 or more (a calendar limit: D <= that day). unknown: some limit is only a lower bound.
 * Otherwise fine; null where there is no forecast.
 *
 * @param inForce limits that bind: the usual ones, and the hard-use ones once switched on
 * @param all these and the hard-use limits that are not switched on: a switch that cannot be judged
 *   never counts as good
 * @param asOfDay day number
 * @param warnDays days, >= 0
 * @param chance that it is due by then, 0..1; null where there is no forecast
 */
export function stateOf(
  inForce: readonly LimitResult[],
  all: readonly LimitResult[],
  asOfDay: number,
  warnDays: number,
  chance: number | null,
): State {
  if (inForce.some((limit) => isOver(limit, asOfDay)))
    return { state: 'overdue', reasonCode: null, reason: null };
  const horizon = asOfDay + warnDays + LOOK_AGAIN_DAYS;
  const dueSoon =
    chance === null
      ? inForce.some((limit) => !isAmountLimit(limit) && parseDay(limit.dueDate) <= horizon)
      : chance >= DUE_SOON_CHANCE;
  if (dueSoon) return { state: 'dueSoon', reasonCode: null, reason: null };
  if (all.some(({ known }) => !known))
    return { state: 'unknown', reasonCode: 'lowerBound', reason: LOWER_BOUND };
  return { state: chance === null ? null : 'fine', reasonCode: null, reason: null };
}

/** True if a limit is passed for certain: reached exactly counts, the last valid day does not. */
export function isOver(limit: LimitResult, asOfDay: number): boolean {
  return isAmountLimit(limit) ? limit.accrued >= limit.limit : asOfDay > parseDay(limit.dueDate);
}

/** What runs out first: the largest fraction, the earlier in the list on a tie. */
export function bindingOf(inForce: readonly LimitResult[]): string | null {
  let first: LimitResult | null = null;
  for (const limit of inForce) if (first === null || limit.fraction > first.fraction) first = limit;
  return first === null ? null : `${first.measure}${first.severe ? ':severe' : ''}`;
}
