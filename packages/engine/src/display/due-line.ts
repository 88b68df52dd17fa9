import { addDays } from '../calendar/add.ts';
import type { Book } from '../log/book.ts';
import { type Analysis, type ItemResult, isAmountLimit } from '../wear/result.ts';
import type { ItemFacts } from './car-facts.ts';
import type { LaneItem } from './lane.ts';
import { laneItem } from './lane-item.ts';
import { isOver, limitsInForce } from './limit-to-speak-of.ts';

/** One item of a car in the garage's list of what falls due; civil dates, amounts as in a lane. */
export type DueLine = LaneItem & {
  /**
   * the days it falls due, also of what is overdue or not wholly known (then at the latest), which the words
   * of a lane leave out; null beyond three years, or where nothing forecasts it
   */
  dates: { early: string | null; likely: string | null; late: string | null };
  /** the first day it was over; null while it is not */
  overdueSince: string | null;
  /** last service or starting point */
  lastDone: string | null;
};

type Facts = ItemFacts & { dueSince?: string | undefined };

/**
 * The items of a car as lines of the garage's list, in the book's order.
 *
 * @param analysis of the same book
 */
export function dueLinesOf(book: Book, analysis: Analysis): DueLine[] {
  const byId = new Map(book.items.map((item) => [item.id, item]));
  return analysis.items.map((result) => dueLine(result, byId.get(result.id)));
}

function dueLine(result: ItemResult, item: Facts | undefined): DueLine {
  const { dueDate } = result;
  return {
    ...laneItem(result, item),
    dates: {
      early: dueDate?.p10 ?? null,
      likely: dueDate?.p50 ?? null,
      late: dueDate?.p90 ?? null,
    },
    overdueSince: overdueSince(result, item),
    lastDone: result.service ?? null,
  };
}

/** What made it due at once decides; else the limit that was passed first. */
function overdueSince(result: ItemResult, item: Facts | undefined): string | null {
  if (result.state !== 'overdue') return null;
  if (result.reasonCode === 'trigger') return result.trigger?.on ?? null;
  if (result.reasonCode === 'asked') return item?.dueSince ?? null;
  const days = limitsInForce(result)
    .filter(isOver)
    // good through its last day, over on the next
    .map((limit) => (isAmountLimit(limit) ? limit.reachedOn : addDays(limit.dueDate, 1)));
  return days.filter((day) => day !== null).sort()[0] ?? null;
}
