import { and, desc, eq } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { entryRevision } from '../schema.ts';

export type RevisionRow = typeof entryRevision.$inferSelect;

/** Every body the entry ever had, newest first; a body of null is its removal. */
export function listRevisions(tx: Tx, garageId: string, entryId: string): Promise<RevisionRow[]> {
  return tx
    .select()
    .from(entryRevision)
    .where(and(eq(entryRevision.garageId, garageId), eq(entryRevision.entryId, entryId)))
    .orderBy(desc(entryRevision.revision));
}

export async function newestRevision(
  tx: Tx,
  garageId: string,
  entryId: string,
): Promise<RevisionRow | null> {
  const [found] = await tx
    .select()
    .from(entryRevision)
    .where(and(eq(entryRevision.garageId, garageId), eq(entryRevision.entryId, entryId)))
    .orderBy(desc(entryRevision.revision))
    .limit(1);
  return found ?? null;
}
