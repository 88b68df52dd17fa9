import { addDays } from '../calendar/add.ts';
import type { Book } from '../log/book.ts';
import type { BookOrder, OrderInput } from '../log/order.ts';
import { latestWorkDay, type OrderBy, orderBy } from '../orders/order-by.ts';
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
  /** days to get its parts */
  leadDays: number;
  /** what there is to say of its parts, by `partsWords()`; null where there is nothing */
  parts: OrderBy | null;
};

type Facts = ItemFacts & { dueSince?: string | undefined; leadDays: number };

/**
 * The items of a car as lines of the garage's list, in the book's order.
 *
 * @param analysis of the same book
 */
export function dueLinesOf(book: Book, analysis: Analysis): DueLine[] {
  const byId = new Map(book.items.map((item) => [item.id, item]));
  return analysis.items.map((result) => {
    const item = byId.get(result.id);
    const orders = (book.orders ?? []).filter((order) => order.item === result.id);
    return dueLine(result, item, partsOf(result, item?.leadDays ?? 0, orders, analysis.asOf));
  });
}

/** What takes no days to get needs no day to order it by. */
function partsOf(
  result: ItemResult,
  leadDays: number,
  orders: readonly BookOrder[],
  asOf: string,
): OrderBy | null {
  const by = orderBy<OrderInput>({
    latestWork: latestWorkDay(result, asOf),
    likely: result.dueDate?.p50 ?? null,
    leadDays,
    orders: orders.map(({ id: _id, item: _item, ...order }) => order),
    service: result.service ?? null,
    asOf,
  });
  return by?.kind === 'orderBy' && leadDays === 0 ? null : by;
}

function dueLine(result: ItemResult, item: Facts | undefined, parts: OrderBy | null): DueLine {
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
    leadDays: item?.leadDays ?? 0,
    parts,
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
