import type { OrderInput } from '@quartermark/engine/log';
import { and, eq, isNull, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { partOrder } from '../schema.ts';

export type NewOrder = {
  garageId: string;
  id: string;
  itemId: string;
  body: OrderInput;
  at: Date;
  by: string;
};

/** @returns false if the id is in use in this garage */
export async function insertOrder(tx: Tx, { at, by, ...row }: NewOrder): Promise<boolean> {
  const made = await tx
    .insert(partOrder)
    .values({ ...row, changedAt: at, changedBy: by })
    .onConflictDoNothing()
    .returning({ id: partOrder.id });
  return made.length === 1;
}

export type OrderChange = {
  garageId: string;
  id: string;
  baseRevision: number;
  at: Date;
  by: string;
};

/** @returns the new revision; null if it is gone or was changed since */
export function changeOrder(tx: Tx, change: OrderChange & { body: OrderInput }) {
  return write(tx, change, { body: change.body });
}

/** @returns as `changeOrder` */
export function removeOrder(tx: Tx, change: OrderChange) {
  return write(tx, change, { removedAt: change.at });
}

async function write(
  tx: Tx,
  { garageId, id, baseRevision, at, by }: OrderChange,
  set: Partial<typeof partOrder.$inferInsert>,
): Promise<number | null> {
  const [changed] = await tx
    .update(partOrder)
    .set({ ...set, revision: sql`${partOrder.revision} + 1`, changedAt: at, changedBy: by })
    .where(
      and(
        eq(partOrder.garageId, garageId),
        eq(partOrder.id, id),
        eq(partOrder.revision, baseRevision),
        isNull(partOrder.removedAt),
      ),
    )
    .returning({ revision: partOrder.revision });
  return changed?.revision ?? null;
}
