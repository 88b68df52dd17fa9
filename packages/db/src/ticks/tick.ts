import { and, asc, eq, inArray, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { workTick } from '../readiness-schema.ts';

export type TickRow = typeof workTick.$inferSelect;

/** @returns false if the id is in use in this garage */
export async function insertTick(tx: Tx, row: TickRow): Promise<boolean> {
  const made = await tx
    .insert(workTick)
    .values(row)
    .onConflictDoNothing()
    .returning({ id: workTick.id });
  return made.length === 1;
}

export async function readTick(tx: Tx, garageId: string, id: string): Promise<TickRow | null> {
  const [found] = await tx
    .select()
    .from(workTick)
    .where(and(eq(workTick.garageId, garageId), eq(workTick.id, id)));
  return found ?? null;
}

/**
 * Ticks of these events in the order in which they were made, so that one that waited for a signal does
 * not undo what was ticked after it. A device's clock that runs ahead counts up to the arrival.
 */
export function listTicks(
  tx: Tx,
  garageId: string,
  eventIds: readonly string[],
): Promise<TickRow[]> {
  return tx
    .select()
    .from(workTick)
    .where(and(eq(workTick.garageId, garageId), inArray(workTick.eventId, [...eventIds])))
    .orderBy(
      asc(sql`least(${workTick.madeAt}, ${workTick.at})`),
      asc(workTick.at),
      asc(workTick.id),
    );
}
