import { and, eq, isNull, notInArray, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { layUp } from '../schema.ts';

export type LayUpWrite = {
  /** id of the entry that opened it */
  id: string;
  startOn: string;
  endOn: string | null;
  closedBy: string | null;
};

/**
 * Makes these the car's storage windows. A window keeps its id; one that is not among them is marked
 * as removed and comes back if its entry opens it again.
 */
export async function replaceLayUps(
  tx: Tx,
  garageId: string,
  carId: string,
  windows: readonly LayUpWrite[],
  at: Date,
): Promise<void> {
  const kept = windows.map((window) => window.id);
  await tx
    .update(layUp)
    .set({ removedAt: at, revision: sql`${layUp.revision} + 1` })
    .where(
      and(
        eq(layUp.garageId, garageId),
        eq(layUp.carId, carId),
        isNull(layUp.removedAt),
        kept.length > 0 ? notInArray(layUp.id, kept) : undefined,
      ),
    );
  if (windows.length === 0) return;
  await tx
    .insert(layUp)
    .values(windows.map((window) => ({ ...window, garageId, carId, openedBy: window.id })))
    .onConflictDoUpdate({
      target: [layUp.garageId, layUp.id],
      set: {
        carId,
        startOn: sql`excluded.start_on`,
        endOn: sql`excluded.end_on`,
        closedBy: sql`excluded.closed_by`,
        removedAt: null,
        revision: sql`${layUp.revision} + 1`,
      },
    });
}
