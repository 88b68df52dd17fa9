import { and, asc, eq } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { putOff } from '../letter-schema.ts';

export type PutOffRow = typeof putOff.$inferSelect;

/** What somebody put off, that which is over included: it is spoken of on the day after. */
export function listPutOffs(tx: Tx, garageId: string): Promise<PutOffRow[]> {
  return tx
    .select()
    .from(putOff)
    .where(eq(putOff.garageId, garageId))
    .orderBy(asc(putOff.until), asc(putOff.fact));
}

/** Puts a fact off, or further off. */
export async function putFactOff(tx: Tx, row: typeof putOff.$inferInsert): Promise<void> {
  const { until, grade, putAt, putBy } = row;
  await tx
    .insert(putOff)
    .values(row)
    .onConflictDoUpdate({
      target: [putOff.garageId, putOff.fact],
      set: { until, grade, putAt, putBy },
    });
}

/** Speaks of a fact again from now on; the day before is the last that it was quiet. */
export async function endPutOff(
  tx: Tx,
  garageId: string,
  fact: string,
  yesterday: string,
): Promise<boolean> {
  const ended = await tx
    .update(putOff)
    .set({ until: yesterday })
    .where(and(eq(putOff.garageId, garageId), eq(putOff.fact, fact)))
    .returning({ fact: putOff.fact });
  return ended.length > 0;
}
