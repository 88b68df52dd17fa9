import type { PlannedLayUp } from '@quartermark/engine/log';
import { and, eq, isNull, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { plannedLayUp } from '../schema.ts';

const days = ({ start, end }: PlannedLayUp) => ({ startOn: start, endOn: end ?? null });

export type NewPlannedLayUp = {
  garageId: string;
  id: string;
  carId: string;
  layUp: PlannedLayUp;
  at: Date;
  by: string;
};

/** @returns false if the id is in use in this garage */
export async function insertPlannedLayUp(tx: Tx, made: NewPlannedLayUp): Promise<boolean> {
  const { garageId, id, carId, layUp, at, by } = made;
  const rows = await tx
    .insert(plannedLayUp)
    .values({ garageId, id, carId, ...days(layUp), changedAt: at, changedBy: by })
    .onConflictDoNothing()
    .returning({ id: plannedLayUp.id });
  return rows.length === 1;
}

export type PlannedLayUpChange = {
  garageId: string;
  id: string;
  baseRevision: number;
  at: Date;
  by: string;
};

/** @returns the new revision; null if it is gone or was changed since */
export function changePlannedLayUp(tx: Tx, change: PlannedLayUpChange & { layUp: PlannedLayUp }) {
  return write(tx, change, days(change.layUp));
}

/** @returns as `changePlannedLayUp` */
export function removePlannedLayUp(tx: Tx, change: PlannedLayUpChange) {
  return write(tx, change, { removedAt: change.at });
}

async function write(
  tx: Tx,
  { garageId, id, baseRevision, at, by }: PlannedLayUpChange,
  set: Partial<typeof plannedLayUp.$inferInsert>,
): Promise<number | null> {
  const [changed] = await tx
    .update(plannedLayUp)
    .set({ ...set, revision: sql`${plannedLayUp.revision} + 1`, changedAt: at, changedBy: by })
    .where(
      and(
        eq(plannedLayUp.garageId, garageId),
        eq(plannedLayUp.id, id),
        eq(plannedLayUp.revision, baseRevision),
        isNull(plannedLayUp.removedAt),
      ),
    )
    .returning({ revision: plannedLayUp.revision });
  return changed?.revision ?? null;
}
