import { and, asc, eq, inArray, isNull } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { type ItemOwner, ownedBy } from '../items/owner.ts';
import { item, partOrder } from '../schema.ts';

export type OrderRow = typeof partOrder.$inferSelect;

/** One order, a removed one included (`removedAt`). */
export async function readOrder(tx: Tx, garageId: string, id: string): Promise<OrderRow | null> {
  const [found] = await tx
    .select()
    .from(partOrder)
    .where(and(eq(partOrder.garageId, garageId), eq(partOrder.id, id)));
  return found ?? null;
}

/** Orders for the items on an owner's list, removed ones left out, by id. */
export async function listOrders(tx: Tx, garageId: string, owner: ItemOwner): Promise<OrderRow[]> {
  const rows = await tx
    .select({ order: partOrder })
    .from(partOrder)
    .innerJoin(item, and(eq(item.garageId, partOrder.garageId), eq(item.id, partOrder.itemId)))
    .where(
      and(
        eq(partOrder.garageId, garageId),
        isNull(partOrder.removedAt),
        isNull(item.removedAt),
        ownedBy(owner),
      ),
    )
    .orderBy(asc(partOrder.id));
  return rows.map(({ order }) => order);
}

/** Orders for these items, removed ones left out, by id. */
export function listOrdersOfItems(
  tx: Tx,
  garageId: string,
  itemIds: readonly string[],
): Promise<OrderRow[]> {
  return tx
    .select()
    .from(partOrder)
    .where(
      and(
        eq(partOrder.garageId, garageId),
        inArray(partOrder.itemId, [...itemIds]),
        isNull(partOrder.removedAt),
      ),
    )
    .orderBy(asc(partOrder.id));
}
