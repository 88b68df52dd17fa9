import type { GearInput } from '@quartermark/engine/log';
import { and, eq, isNull, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { gear } from '../schema.ts';

export type NewGear = { garageId: string; id: string; body: GearInput; at: Date; by: string };

/** @returns false if the id is in use in this garage */
export async function insertGear(tx: Tx, { garageId, id, body, at, by }: NewGear) {
  const made = await tx
    .insert(gear)
    .values({ garageId, id, kind: body.kind, body, addedAt: at, changedAt: at, changedBy: by })
    .onConflictDoNothing()
    .returning({ id: gear.id });
  return made.length === 1;
}

export type GearChange = {
  garageId: string;
  id: string;
  baseRevision: number;
  at: Date;
  by: string;
};

/** @returns the new revision; null if it is gone or was changed since */
export function changeGear(tx: Tx, change: GearChange & { body: GearInput }) {
  return write(tx, change, { body: change.body, kind: change.body.kind });
}

/** Takes it off the list; its entries stay. @returns as `changeGear` */
export function removeGear(tx: Tx, change: GearChange) {
  return write(tx, change, { removedAt: change.at });
}

async function write(
  tx: Tx,
  { garageId, id, baseRevision, at, by }: GearChange,
  set: Partial<typeof gear.$inferInsert>,
): Promise<number | null> {
  const [changed] = await tx
    .update(gear)
    .set({ ...set, revision: sql`${gear.revision} + 1`, changedAt: at, changedBy: by })
    .where(
      and(
        eq(gear.garageId, garageId),
        eq(gear.id, id),
        eq(gear.revision, baseRevision),
        isNull(gear.removedAt),
      ),
    )
    .returning({ revision: gear.revision });
  return changed?.revision ?? null;
}
