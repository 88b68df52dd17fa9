import { type ItemResult, isAmountLimit } from '../wear/result.ts';
import { type ItemFacts, typedLimit } from './car-facts.ts';
import type { LaneItem } from './lane.ts';
import { limitToSpeakOf } from './limit-to-speak-of.ts';

/** An item as the overview holds it: the one limit its state rests on, and when it falls due. */
export function laneItem(result: ItemResult, item: ItemFacts | undefined): LaneItem {
  const doneOnce = result.reasonCode === 'doneOnce';
  const limit = doneOnce ? null : limitToSpeakOf(result);
  const day = doneOnce ? (result.service ?? null) : null;
  const shared = {
    id: result.id,
    name: item?.name ?? result.id,
    state: result.state,
    reasonCode: result.reasonCode,
    ...(result.trigger && { cause: { code: result.trigger.code, on: result.trigger.on } }),
    ...(!doneOnce && forecastOf(result)),
  };
  if (limit === null)
    return { ...shared, binding: null, limit: null, remaining: null, unit: null, day };
  const typed = item && typedLimit(item, limit.measure, limit.severe);
  const binding = limit.severe ? `${limit.measure}:severe` : limit.measure;
  const unit = typed?.measure === 'km' ? typed.unit : null;
  if (isAmountLimit(limit))
    return {
      ...shared,
      binding,
      limit: limit.limit,
      remaining: limit.remaining,
      unit,
      day: limit.reachedOn,
      ...(!limit.known && { known: false as const }),
    };
  const span = typeof limit.limit === 'number' ? limit.limit : null;
  return { ...shared, binding, limit: span, remaining: null, unit, day: limit.dueDate };
}

/** Days that lie ahead: what is overdue has none, and what is not known may have passed already. */
function forecastOf(result: ItemResult): Pick<LaneItem, 'likely' | 'early' | 'readingNeeded'> {
  const { state, dueDate } = result;
  if (dueDate === undefined || state === 'overdue' || state === 'unknown') return {};
  const { p50: likely, p10: early } = dueDate;
  return { likely, early, ...(readingHelps(result) && { readingNeeded: true }) };
}

/** On the last day of twelve months no reading tells more: only an amount is asked for. */
function readingHelps({ probablyOverdue, dueDate, limits }: ItemResult): boolean {
  if (probablyOverdue !== true) return false;
  return limits.some((limit) => isAmountLimit(limit) && limit.due?.p50 === dueDate?.p50);
}
