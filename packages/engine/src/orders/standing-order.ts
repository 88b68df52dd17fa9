import type { OrderInput } from '../log/order.ts';

/**
 * True while an order stands: its parts are on their way or on the shelf. A service of the item later
 * than the order closes it; where the day of arrival is known, a service on that day or later does,
 * since one before it was done with other parts.
 *
 * @param service civil date on which the item was last done; null where it never was
 * @example orderStands({ on: '2026-06-03' }, '2026-06-03') // true: it was ordered for the next time
 */
export function orderStands({ on, arrived }: OrderInput, service: string | null): boolean {
  if (service === null) return true;
  return arrived === undefined ? service <= on : service < arrived;
}

/**
 * The order to speak of: parts on the shelf before parts on their way, of these the ones expected
 * first, of equals the one ordered last.
 *
 * @param orders of one item, in any order
 * @param service as in `orderStands`
 * @returns null where none stands
 */
export function standingOrder<O extends OrderInput>(
  orders: readonly O[],
  service: string | null,
): O | null {
  const standing = orders.filter((order) => orderStands(order, service));
  return standing.reduce<O | null>(
    (best, order) => (best === null || comesFirst(order, best) ? order : best),
    null,
  );
}

function comesFirst(a: OrderInput, b: OrderInput): boolean {
  const [first, second] = [placeOf(a), placeOf(b)];
  return first === second ? a.on > b.on : first < second;
}

/** Sorts as text: what is here, then by the day expected, then what nobody expects on a day. */
function placeOf({ arrived, expected }: OrderInput): string {
  return arrived === undefined ? (expected ?? '9999-12-31') : '';
}
