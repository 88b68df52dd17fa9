import { addDays } from '../calendar/add.ts';
import type { OrderInput } from '../log/order.ts';
import type { ItemResult } from '../wear/result.ts';
import { standingOrder } from './standing-order.ts';

/** What there is to say of an item's parts. */
export type OrderBy<O extends OrderInput = OrderInput> =
  /** here; no days are needed to get them */
  | { kind: 'onTheShelf'; order: O }
  /** on their way; `late`: expected after the day on which it likely falls due */
  | { kind: 'ordered'; order: O; late: boolean }
  /** to be ordered by this day; `feasible` false: that day has passed */
  | { kind: 'orderBy'; day: string; feasible: boolean };

type Parts<O extends OrderInput> = {
  /** the last day on which the work can be done without running over; null: no such day is known */
  latestWork: string | null;
  /** the day on which it likely falls due; null: not known */
  likely: string | null;
  /** days to get the parts, 0 or more */
  leadDays: number;
  orders: readonly O[];
  /** civil date on which the item was last done; null where it never was */
  service: string | null;
  /** civil date */
  asOf: string;
};

/**
 * Until when the parts of an item are to be ordered: orderBy = latest work date - lead days, and it
 * is feasible while orderBy >= asOf. An order that stands silences it and is told instead.
 *
 * @returns null where no order stands and no work date is known
 * @example
 * orderBy({ latestWork: '2026-06-20', likely: '2026-07-01', leadDays: 6, orders: [], service: null, asOf: '2026-06-15' })
 * // { kind: 'orderBy', day: '2026-06-14', feasible: false }
 */
export function orderBy<O extends OrderInput>(parts: Parts<O>): OrderBy<O> | null {
  const { latestWork, likely, leadDays, orders, service, asOf } = parts;
  const order = standingOrder(orders, service);
  if (order !== null) {
    if (order.arrived !== undefined) return { kind: 'onTheShelf', order };
    return { kind: 'ordered', order, late: isLate(order.expected, likely, asOf) };
  }
  if (latestWork === null) return null;
  const day = addDays(latestWork, -leadDays);
  return { kind: 'orderBy', day, feasible: day >= asOf };
}

/** Parts that should have come before today come today at the earliest. */
function isLate(expected: string | undefined, likely: string | null, asOf: string): boolean {
  if (expected === undefined || likely === null) return false;
  return (expected < asOf ? asOf : expected) > likely;
}

/**
 * Days that the parts of an item take from today on: none while an order of it is on the shelf.
 *
 * @param leadDays as the item says
 */
export function leadDaysNow(
  leadDays: number,
  orders: readonly OrderInput[],
  service: string | null,
): number {
  return standingOrder(orders, service)?.arrived === undefined ? leadDays : 0;
}

/**
 * The last day on which the work of an item can be done where no event asks for it earlier: the day
 * it could fall due as early as, and never a day that has passed; today for what is overdue. Null
 * where that is beyond the horizon, no forecast was made, or a one-off has been done.
 *
 * @param result of the item
 * @param asOf civil date
 */
export function latestWorkDay(
  { state, reasonCode, dueDate }: Pick<ItemResult, 'state' | 'reasonCode' | 'dueDate'>,
  asOf: string,
): string | null {
  if (reasonCode === 'doneOnce') return null;
  if (state === 'overdue') return asOf;
  const early = dueDate?.p10 ?? null;
  return early === null || early > asOf ? early : asOf;
}
