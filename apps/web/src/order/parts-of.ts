import type { ItemResult } from '@quartermark/engine';
import { partsWords } from '@quartermark/engine/display';
import type { ItemInput, OrderInput } from '@quartermark/engine/log';
import { latestWorkDay, type OrderBy, orderBy } from '@quartermark/engine/orders';

type Item = Pick<ItemInput, 'leadDays'>;

type Parts = {
  item: Item;
  orders: readonly OrderInput[];
  /** null: not worked out yet */
  result: ItemResult | null;
  /** of the garage */
  today: string;
};

/** What there is to know of an item's parts, and its words; null where there is nothing to say. */
export function partsOf(parts: Parts): { by: OrderBy; words: string } | null {
  const { item, orders, result, today } = parts;
  const by = orderBy({
    latestWork: result && latestWorkDay(result, today),
    // of what has run out already, nothing comes before the day
    likely: result?.state === 'overdue' ? null : (result?.dueDate?.p50 ?? null),
    leadDays: item.leadDays,
    orders,
    service: result?.service ?? null,
    asOf: today,
  });
  const words = by && partsWords(by, item, { asOf: today });
  return by && words !== null ? { by, words } : null;
}
