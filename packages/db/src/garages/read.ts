import { eq } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { garage } from '../schema.ts';

export type GarageRow = typeof garage.$inferSelect;

export async function readGarage(tx: Tx, garageId: string): Promise<GarageRow | null> {
  const [found] = await tx.select().from(garage).where(eq(garage.id, garageId));
  return found ?? null;
}

/**
 * The garage's row, locked until the transaction ends, so that writes of one garage follow one another.
 * Every verb takes this lock first and cars' rows after it: one order, no deadlock.
 */
export async function lockGarage(tx: Tx, garageId: string): Promise<GarageRow> {
  const [found] = await tx.select().from(garage).where(eq(garage.id, garageId)).for('update');
  if (found) return found;
  throw new Error(
    `could not lock garage ${garageId}: the transaction should be inside that garage`,
  );
}
