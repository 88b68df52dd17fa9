import { type ItemRow, type OrderRow, readItem, readOrder } from '@quartermark/db';
import type { Writing } from '../command/run-command.ts';
import { notFoundHere, refuse } from '../refused.ts';
import { stale } from '../stale.ts';

/**
 * The order as it stands, if it may be changed from `baseRevision`, and its item.
 *
 * @throws Refused `notFound`, `removed` or `conflict`
 */
export async function standingOrder(
  { tx, garage }: Writing,
  orderId: string,
  baseRevision: number,
): Promise<{ order: OrderRow; item: ItemRow }> {
  const order = await readOrder(tx, garage.id, orderId);
  const item = order && (await readItem(tx, garage.id, order.itemId));
  if (!order || !item) throw notFoundHere('order', 'orderId');
  if (order.removedAt)
    throw refuse(
      'removed',
      'orderId',
      'This order was removed and stays so; what you wrote is still in the form. Write it down as a new one.',
    );
  if (order.revision !== baseRevision)
    throw await stale(tx, garage.id, 'The order was', baseRevision, order);
  return { order, item };
}
