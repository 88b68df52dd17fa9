import type { AmountMeasure } from '../log/item.ts';
import { AMOUNT_MEASURES } from '../log/item.ts';
import type { DistanceUnit } from '../log/units.ts';
import { type ItemResult, isAmountLimit } from '../wear/result.ts';
import { type ItemFacts, typedLimit } from './car-facts.ts';
import { causeWords } from './cause-words.ts';
import { formatDay } from './format-day.ts';
import { formatAmount, formatCount } from './format-quantity.ts';
import type { LaneItem } from './lane.ts';
import { limitToSpeakOf } from './limit-to-speak-of.ts';

/** Which of the states a screen shows: goes with a mark and a colour, never shown itself. */
export type ItemMark =
  | 'overdue'
  | 'dueSoon'
  | 'notOnRecord'
  | 'atLeast'
  | 'inLimits'
  | 'noDate'
  | 'beforeItWakes';

export type ItemWords = {
  mark: ItemMark;
  /** the state in words */
  word: string;
  /** the figures behind it; may be empty */
  detail: string;
};

type Spoken = {
  measure: string;
  amount: AmountMeasure | null;
  limit: number | null;
  remaining: number | null;
  day: string | null;
  unit: DistanceUnit;
};

function spoken(item: LaneItem, unit: DistanceUnit): Spoken | null {
  if (item.binding === null) return null;
  const measure = item.binding.replace(/:severe$/, '');
  const amount = AMOUNT_MEASURES.find((known) => known === measure) ?? null;
  return { ...item, measure, amount, unit: item.unit ?? unit };
}

function span(of: Spoken): string {
  return formatCount(of.limit ?? 0, of.measure === 'days' ? 'day' : 'month');
}

function overdueDetail(of: Spoken): string {
  const day = of.day === null ? null : formatDay(of.day);
  if (of.amount !== null && of.limit !== null) {
    const over = -(of.remaining ?? 0);
    const reached = `${formatAmount(of.amount, of.limit, of.unit)} reached${day ? ` on ${day}` : ''}`;
    return over > 0 ? `${reached}, ${formatAmount(of.amount, over, of.unit)} over` : reached;
  }
  if (of.measure === 'date') return `the date on the label, ${day}, has passed`;
  return `${span(of)} passed on ${day}`;
}

function left(of: Spoken): string {
  if (of.amount !== null) return `${formatAmount(of.amount, of.remaining ?? 0, of.unit)} left`;
  const day = of.day === null ? 'an unknown day' : formatDay(of.day);
  if (of.measure === 'date') return `the label says ${day}`;
  return `${span(of)} are up on ${day}`.replace(/^1 (day|month) are/, '1 $1 is');
}

function used(of: Spoken): string {
  if (of.amount === null || of.limit === null) return '';
  const done = of.limit - (of.remaining ?? of.limit);
  return `${formatAmount(of.amount, done, of.unit)} of ${formatAmount(of.amount, of.limit, of.unit)} used`;
}

function atLeast(of: Spoken | null): ItemWords {
  if (of === null || of.amount === null || of.limit === null)
    return { mark: 'atLeast', word: 'At least', detail: 'history incomplete' };
  const done = of.limit - (of.remaining ?? of.limit);
  return {
    mark: 'atLeast',
    word: `At least ${formatAmount(of.amount, done, of.unit)}`,
    detail: `history incomplete; the limit is ${formatAmount(of.amount, of.limit, of.unit)}`,
  };
}

/** What stands behind a day that was said already. */
function behindTheDay(of: Spoken): string {
  if (of.day === null) return left(of);
  if (of.measure === 'date') return 'by its label';
  return `${span(of)} are up then`.replace(/^1 (day|month) are/, '1 $1 is');
}

function noDate(of: Spoken | null): ItemWords {
  if (of === null) return { mark: 'noDate', word: 'No date yet', detail: '' };
  if (of.amount !== null)
    return { mark: 'noDate', word: `${left(of)}, no date yet`, detail: used(of) };
  return {
    mark: 'noDate',
    word: `${of.day ? formatDay(of.day) : 'No date yet'} at the latest`,
    detail: behindTheDay(of),
  };
}

/** Why an item is due whatever its limits say; null where the limits decide. */
function dueAtOnce({ reasonCode, cause }: LaneItem): string | null {
  if (reasonCode === 'asked') return 'you said to treat it as due now';
  return reasonCode === 'trigger' && cause ? causeWords(cause) : null;
}

function doneOnceDetail({ day }: LaneItem): string {
  return day === null ? 'and that was all' : `on ${formatDay(day)}`;
}

/**
 * The words for an item's state: the one map from the engine's codes to what a screen says.
 *
 * A laid-up car has no overdue items: what has run out waits until before it wakes.
 *
 * @param item as the overview holds it; a full result is turned into one by `laneItem()`
 * @param unit unit of the car's odometer, used where the limit itself has none
 * @param laidUp the car stands in a lay-up today
 */
export function laneItemWords(item: LaneItem, unit: DistanceUnit, laidUp: boolean): ItemWords {
  const of = spoken(item, unit);
  switch (item.state) {
    case 'overdue': {
      const detail = dueAtOnce(item) ?? (of === null ? '' : overdueDetail(of));
      if (laidUp) return { mark: 'beforeItWakes', word: 'Before it wakes', detail };
      return { mark: 'overdue', word: 'Overdue', detail };
    }
    case 'dueSoon': {
      const detail = of === null ? '' : left(of);
      if (laidUp) return { mark: 'beforeItWakes', word: 'Before it wakes', detail };
      return { mark: 'dueSoon', word: 'Due soon', detail };
    }
    case 'unknown':
      if (item.reasonCode === 'lowerBound') return atLeast(of);
      return { mark: 'notOnRecord', word: 'Not on record', detail: 'say when it was last done' };
    case 'fine':
      if (item.reasonCode === 'doneOnce')
        return { mark: 'inLimits', word: 'Done once', detail: doneOnceDetail(item) };
      return { mark: 'inLimits', word: 'In limits', detail: of === null ? '' : left(of) };
    case null:
      return noDate(of);
  }
}

/** An item as the overview holds it: the one limit its state rests on. */
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
    };
  const span = typeof limit.limit === 'number' ? limit.limit : null;
  return { ...shared, binding, limit: span, remaining: null, unit, day: limit.dueDate };
}

/** The words for an item on the car's own page. See `laneItemWords()`. */
export function itemWords(
  result: ItemResult,
  item: ItemFacts | undefined,
  unit: DistanceUnit,
  laidUp: boolean,
): ItemWords {
  return laneItemWords(laneItem(result, item), unit, laidUp);
}
