import { eq, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { garage } from '../schema.ts';

/**
 * The next ordinal of the garage's record: 1, 2, 3 ... The row stays locked until the transaction
 * ends, so an ordinal is given back if the transaction fails and no gap is left.
 */
export async function nextRecorded(tx: Tx, garageId: string): Promise<number> {
  const [row] = await tx
    .update(garage)
    .set({ recorded: sql`${garage.recorded} + 1` })
    .where(eq(garage.id, garageId))
    .returning({ recorded: garage.recorded });
  if (row) return row.recorded;
  throw new Error(`could not number an entry: the transaction is not inside garage ${garageId}`);
}
