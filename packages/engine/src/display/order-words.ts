import type { OrderInput } from '../log/order.ts';
import type { OrderBy } from '../orders/order-by.ts';
import { dayAhead, type Spoken } from './due-words.ts';

/**
 * An order by itself: when it was made, when its parts are expected, or that they have come.
 *
 * @example orderWords({ on: '2026-06-03', expected: '2026-06-12' }, { asOf: '2026-06-05' })
 * // "ordered 3 June, expected 12 June"
 */
export function orderWords(order: OrderInput, spoken: Spoken): string {
  const { on, expected, arrived } = order;
  const ordered = `ordered ${dayAhead(on, spoken)}`;
  if (arrived !== undefined) return `${ordered}, arrived ${dayAhead(arrived, spoken)}`;
  if (expected === undefined) return `${ordered}, no day expected`;
  const waited = spoken.asOf !== null && expected < spoken.asOf ? ' and not here yet' : '';
  return `${ordered}, expected ${dayAhead(expected, spoken)}${waited}`;
}

type Item = { leadDays: number };

/**
 * What there is to say of an item's parts; null where there is nothing to order.
 *
 * @example partsWords({ kind: 'orderBy', day: '2026-06-18', feasible: true }, { leadDays: 12 }, { asOf: '2026-06-15' })
 * // "order the parts by 18 June, they take 12 days"
 */
export function partsWords(by: OrderBy, { leadDays }: Item, spoken: Spoken): string | null {
  switch (by.kind) {
    case 'onTheShelf':
      return `parts arrived${arrivedOn(by.order, spoken)}, on the shelf`;
    case 'ordered':
      return `parts ${orderWords(by.order, spoken)}${by.late ? ': arrives after it is likely due' : ''}`;
    case 'orderBy': {
      // no days to wait for: they are had on the day
      if (leadDays === 0) return null;
      const take = `they take ${leadDays === 1 ? '1 day' : `${leadDays} days`}`;
      return by.feasible
        ? `order the parts by ${dayAhead(by.day, spoken)}, ${take}`
        : `order the parts now, ${take}`;
    }
  }
}

function arrivedOn({ arrived }: OrderInput, spoken: Spoken): string {
  return arrived === undefined ? '' : ` ${dayAhead(arrived, spoken)}`;
}
