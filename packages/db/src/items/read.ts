import { and, asc, eq, isNull } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { item } from '../schema.ts';
import { type ItemOwner, ownedBy } from './owner.ts';

export type ItemRow = typeof item.$inferSelect;

/** One item, a removed one included (`removedAt`). */
export async function readItem(tx: Tx, garageId: string, id: string): Promise<ItemRow | null> {
  const [found] = await tx
    .select()
    .from(item)
    .where(and(eq(item.garageId, garageId), eq(item.id, id)));
  return found ?? null;
}

/** The owner's items in the order of its list, removed ones left out. */
export function listItems(tx: Tx, garageId: string, owner: ItemOwner): Promise<ItemRow[]> {
  return tx
    .select()
    .from(item)
    .where(and(eq(item.garageId, garageId), ownedBy(owner), isNull(item.removedAt)))
    .orderBy(asc(item.position), asc(item.id));
}
