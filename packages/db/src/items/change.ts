import type { ItemInput } from '@quartermark/engine/log';
import { and, eq, isNull, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { item } from '../schema.ts';

export type ItemChange = {
  garageId: string;
  id: string;
  baseRevision: number;
  at: Date;
  by: string;
};

/** @returns the new revision and whose it is; null if the item is gone or was changed since */
export function changeItem(tx: Tx, change: ItemChange & { body: ItemInput }) {
  return write(tx, change, { body: change.body });
}

/** Removes an item from the list; its history stays. @returns as `changeItem` */
export function removeItem(tx: Tx, change: ItemChange) {
  return write(tx, change, { removedAt: change.at });
}

async function write(
  tx: Tx,
  { garageId, id, baseRevision, at, by }: ItemChange,
  set: Partial<typeof item.$inferInsert>,
): Promise<{ revision: number; carId: string | null; gearId: string | null } | null> {
  const [changed] = await tx
    .update(item)
    .set({ ...set, revision: sql`${item.revision} + 1`, changedAt: at, changedBy: by })
    .where(
      and(
        eq(item.garageId, garageId),
        eq(item.id, id),
        eq(item.revision, baseRevision),
        isNull(item.removedAt),
      ),
    )
    .returning({ revision: item.revision, carId: item.carId, gearId: item.gearId });
  return changed ?? null;
}
