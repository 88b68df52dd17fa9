import type { OrderRow } from '@quartermark/db';
import { orderInput } from '@quartermark/engine/log';
import type { OrderView } from '../views.ts';

export function orderViewOf({ id: orderId, itemId, body, revision }: OrderRow): OrderView {
  const order = orderInput.safeParse(body);
  // an order that a later schema faults is shown as it stands
  return { orderId, itemId, order: order.success ? order.data : body, revision };
}
