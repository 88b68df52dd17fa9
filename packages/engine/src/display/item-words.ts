import type { AmountMeasure } from '../log/item.ts';
import { AMOUNT_MEASURES } from '../log/item.ts';
import type { DistanceUnit } from '../log/units.ts';
import type { ItemResult } from '../wear/result.ts';
import type { ItemFacts } from './car-facts.ts';
import { causeWords } from './cause-words.ts';
import { earlyWords, type Likely, likelyWords, nearWords } from './due-words.ts';
import { formatDay } from './format-day.ts';
import { formatAmount, formatCount } from './format-quantity.ts';
import type { LaneItem } from './lane.ts';
import { laneItem } from './lane-item.ts';

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

/** What the words for an item need of what it belongs to. */
export type Standing = {
  /** unit of the odometer, used where the limit itself has none */
  unit: DistanceUnit;
  /** the car stands in a lay-up today */
  laidUp: boolean;
  /** civil date the state was worked out for; null = not known, so that every day keeps its year */
  asOf: string | null;
};

/** The limit an item's state rests on, ready to be said. */
type Rests = {
  measure: string;
  severe: boolean;
  amount: AmountMeasure | null;
  limit: number | null;
  remaining: number | null;
  day: string | null;
  unit: DistanceUnit;
  known: boolean;
};

function restsOn(item: LaneItem, unit: DistanceUnit): Rests | null {
  if (item.binding === null) return null;
  const [measure = '', schedule] = item.binding.split(':');
  const amount = AMOUNT_MEASURES.find((known) => known === measure) ?? null;
  const severe = schedule === 'severe';
  return { ...item, measure, severe, amount, unit: item.unit ?? unit, known: item.known ?? true };
}

function span(of: Rests): string {
  return formatCount(of.limit ?? 0, of.measure === 'days' ? 'day' : 'month');
}

function overdueDetail(of: Rests): string {
  const day = of.day === null ? null : formatDay(of.day);
  if (of.amount !== null && of.limit !== null) {
    const over = -(of.remaining ?? 0);
    const reached = `${formatAmount(of.amount, of.limit, of.unit)} reached${day ? ` on ${day}` : ''}`;
    return over > 0 ? `${reached}, ${formatAmount(of.amount, over, of.unit)} over` : reached;
  }
  if (of.measure === 'date') return `the date on the label, ${day}, has passed`;
  return `${span(of)} passed on ${day}`;
}

function left(of: Rests): string {
  if (of.amount !== null) {
    const rest = `${formatAmount(of.amount, of.remaining ?? 0, of.unit)} left`;
    return of.known ? rest : `at most ${rest}, history incomplete`;
  }
  const day = of.day === null ? 'an unknown day' : formatDay(of.day);
  if (of.measure === 'date') return `the label says ${day}`;
  return `${span(of)} are up on ${day}`.replace(/^1 (day|month) are/, '1 $1 is');
}

function used(of: Rests): string {
  if (of.amount === null || of.limit === null) return '';
  const done = of.limit - (of.remaining ?? of.limit);
  return `${formatAmount(of.amount, done, of.unit)} of ${formatAmount(of.amount, of.limit, of.unit)} used`;
}

function atLeast(of: Rests | null): ItemWords {
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
function behindTheDay(of: Rests): string {
  if (of.day === null) return left(of);
  if (of.measure === 'date') return 'by its label';
  return `${span(of)} are up then`.replace(/^1 (day|month) are/, '1 $1 is');
}

function noDate(of: Rests | null): ItemWords {
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

/** A day of the calendar that is sure to come; a forecast may say otherwise of a schedule not in force yet. */
function isSureDay(of: Rests, { likely }: LaneItem): boolean {
  if (of.amount !== null || of.day === null) return false;
  return likely === undefined || likely === of.day || (likely === null && !of.severe);
}

/** When it falls due and what that rests on; `near`: as one says what is due soon. */
function whenDue(item: LaneItem, of: Rests | null, on: Standing, near: boolean): string {
  if (of === null) return '';
  const { likely, early = null } = item;
  if (isSureDay(of, item)) {
    const sooner = near && early !== null && of.day !== null && early < of.day;
    return sooner ? `${left(of)}, ${earlyWords(early, on)}` : left(of);
  }
  if (likely === undefined) return left(of);
  if (item.readingNeeded) return `more likely than not past its limit by now: ${toRead(of)}`;
  const days: Likely = { likely, early };
  const when = near ? nearWords(days, on) : likelyWords(days, on);
  const why = of.amount === null ? 'by the schedule for hard use' : left(of);
  return `${when}; ${why}`;
}

/**
 * When something falls due with the day it could be as early as, however far off that is, and what is left.
 *
 * @param item neither overdue nor unknown
 * @example dueWords(item, on) // "likely by Sat 3 October, could be as early as 30 August; 2,300 km left"
 */
export function dueWords(item: LaneItem, on: Standing): string {
  return whenDue(item, restsOn(item, on.unit), on, true);
}

function toRead({ amount }: Rests): string {
  if (amount === 'km') return 'read the odometer';
  return amount === 'hours' ? 'read the meter' : 'record the use since';
}

/**
 * The words for an item's state: the one map from the engine's codes to what a screen says.
 *
 * A laid-up car has no overdue items: what has run out waits until before it wakes.
 *
 * @param item as the overview holds it; a full result is turned into one by `laneItem()`
 * @param on the car it is on, or the component, tool or person
 * @example laneItemWords(item, { unit: 'km', laidUp: false, asOf: '2026-05-10' })
 * // { mark: 'dueSoon', word: 'Due soon',
 * //   detail: 'likely by Sat 20 June, could be as early as 21 May; 1,200 km left' }
 */
export function laneItemWords(item: LaneItem, on: Standing): ItemWords {
  const of = restsOn(item, on.unit);
  switch (item.state) {
    case 'overdue': {
      const detail = dueAtOnce(item) ?? (of === null ? '' : overdueDetail(of));
      if (on.laidUp) return { mark: 'beforeItWakes', word: 'Before it wakes', detail };
      return { mark: 'overdue', word: 'Overdue', detail };
    }
    case 'dueSoon': {
      const detail = whenDue(item, of, on, true);
      const word = on.laidUp ? 'Before it wakes' : 'Due soon';
      const mark = on.laidUp ? 'beforeItWakes' : 'dueSoon';
      return { mark, word: item.readingNeeded ? `${word}, reading needed` : word, detail };
    }
    case 'unknown':
      if (item.reasonCode === 'lowerBound') return atLeast(of);
      return { mark: 'notOnRecord', word: 'Not on record', detail: 'say when it was last done' };
    case 'fine':
      if (item.reasonCode === 'doneOnce')
        return { mark: 'inLimits', word: 'Done once', detail: doneOnceDetail(item) };
      return { mark: 'inLimits', word: 'In limits', detail: whenDue(item, of, on, false) };
    case null:
      return noDate(of);
  }
}

/** The words for an item on its own page. See `laneItemWords()`. */
export function itemWords(
  result: ItemResult,
  item: ItemFacts | undefined,
  on: Standing,
): ItemWords {
  return laneItemWords(laneItem(result, item), on);
}
