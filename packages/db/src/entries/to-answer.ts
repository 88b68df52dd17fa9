import { and, asc, eq, inArray, isNull } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { entry } from '../schema.ts';
import type { EntryRow } from './read.ts';

/** Findings, incidents and answers of the whole garage, as recorded, tombstones left out. */
export function listToAnswer(tx: Tx, garageId: string): Promise<EntryRow[]> {
  return tx
    .select()
    .from(entry)
    .where(
      and(
        eq(entry.garageId, garageId),
        inArray(entry.kind, ['finding', 'incident', 'answer']),
        isNull(entry.removedAt),
      ),
    )
    .orderBy(asc(entry.recorded));
}
