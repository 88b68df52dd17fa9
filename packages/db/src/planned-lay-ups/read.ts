import { and, asc, eq, gte, isNull, or } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { plannedLayUp } from '../schema.ts';

export type PlannedLayUpRow = typeof plannedLayUp.$inferSelect;

/** One planned lay-up, a removed one included (`removedAt`). */
export async function readPlannedLayUp(
  tx: Tx,
  garageId: string,
  id: string,
): Promise<PlannedLayUpRow | null> {
  const [found] = await tx
    .select()
    .from(plannedLayUp)
    .where(and(eq(plannedLayUp.garageId, garageId), eq(plannedLayUp.id, id)));
  return found ?? null;
}

/**
 * Planned lay-ups that end on a day or later, those without an end among them, by their first day.
 *
 * @param since civil date in the garage's zone
 * @param carId of one car alone; of all cars without it
 */
export function listPlannedLayUps(
  tx: Tx,
  garageId: string,
  since: string,
  carId?: string,
): Promise<PlannedLayUpRow[]> {
  return tx
    .select()
    .from(plannedLayUp)
    .where(
      and(
        eq(plannedLayUp.garageId, garageId),
        carId === undefined ? undefined : eq(plannedLayUp.carId, carId),
        or(isNull(plannedLayUp.endOn), gte(plannedLayUp.endOn, since)),
        isNull(plannedLayUp.removedAt),
      ),
    )
    .orderBy(asc(plannedLayUp.startOn), asc(plannedLayUp.id));
}
