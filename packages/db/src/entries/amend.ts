import type { EntryInput } from '@quartermark/engine/log';
import { and, eq, isNull, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { entry, entryRevision } from '../schema.ts';
import { gearIdOf } from './gear-id-of.ts';
import type { EntryRow } from './read.ts';

export type EntryChange = {
  garageId: string;
  id: string;
  /** the revision the person saw */
  baseRevision: number;
  at: Date;
  by: string;
  commandId: string;
};

/**
 * Gives an entry another body; it keeps its id and its `recorded` ordinal.
 *
 * @returns the row as it is now; null if it is not there, was removed, or is past `baseRevision`
 *   (`readEntry` and `newestRevision` say which)
 */
export function amendEntry(
  tx: Tx,
  change: EntryChange & { body: EntryInput },
): Promise<EntryRow | null> {
  const { body } = change;
  const { on, kind, car } = body;
  const set = { body, on, kind, carId: car ?? null, gearId: gearIdOf(body) };
  return write(tx, change, set, body);
}

/** Leaves a tombstone, which nothing revives. @returns as `amendEntry` */
export function removeEntry(tx: Tx, change: EntryChange): Promise<EntryRow | null> {
  return write(tx, change, { removedAt: change.at }, null);
}

async function write(
  tx: Tx,
  { garageId, id, baseRevision, at, by, commandId }: EntryChange,
  set: Partial<typeof entry.$inferInsert>,
  body: EntryInput | null,
): Promise<EntryRow | null> {
  const [row] = await tx
    .update(entry)
    .set({ ...set, revision: sql`${entry.revision} + 1` })
    .where(
      and(
        eq(entry.garageId, garageId),
        eq(entry.id, id),
        eq(entry.revision, baseRevision),
        isNull(entry.removedAt),
      ),
    )
    .returning();
  if (!row) return null;
  await tx
    .insert(entryRevision)
    .values({ garageId, entryId: id, revision: row.revision, body, at, by, commandId });
  return row;
}
