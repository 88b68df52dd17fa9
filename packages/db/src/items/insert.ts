import type { ItemInput } from '@quartermark/engine/log';
import { and, eq, max } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { item } from '../schema.ts';
import { type ItemOwner, ownedBy } from './owner.ts';

export type NewItem = {
  garageId: string;
  id: string;
  /** whose it is */
  owner: ItemOwner;
  body: ItemInput;
  at: Date;
  by: string;
};

/**
 * Adds an item at the end of its owner's list. Call with the garage locked, or two could share a place.
 *
 * @returns false if the id is in use in this garage
 */
export async function insertItem(tx: Tx, { at, by, owner, ...row }: NewItem): Promise<boolean> {
  const [last] = await tx
    .select({ position: max(item.position) })
    .from(item)
    .where(and(eq(item.garageId, row.garageId), ownedBy(owner)));
  const made = await tx
    .insert(item)
    .values({
      ...row,
      ...owner,
      position: (last?.position ?? -1) + 1,
      changedAt: at,
      changedBy: by,
    })
    .onConflictDoNothing()
    .returning({ id: item.id });
  return made.length === 1;
}
