import type { EntryKind } from '@quartermark/engine/log';
import { and, asc, eq, gte, inArray, isNull } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { entry } from '../schema.ts';

export type EntryRow = typeof entry.$inferSelect;

/** One entry, a tombstone included (`removedAt`). */
export async function readEntry(tx: Tx, garageId: string, id: string): Promise<EntryRow | null> {
  const [found] = await tx
    .select()
    .from(entry)
    .where(and(eq(entry.garageId, garageId), eq(entry.id, id)));
  return found ?? null;
}

/** Several entries at once, tombstones included, by day and then as recorded. */
export function readEntries(tx: Tx, garageId: string, ids: readonly string[]): Promise<EntryRow[]> {
  return tx
    .select()
    .from(entry)
    .where(and(eq(entry.garageId, garageId), inArray(entry.id, [...ids])))
    .orderBy(asc(entry.on), asc(entry.recorded));
}

/** All entries of a car of these kinds, by day and then as recorded, tombstones left out. */
export function listEntriesOfKinds(
  tx: Tx,
  garageId: string,
  carId: string,
  kinds: readonly EntryKind[],
): Promise<EntryRow[]> {
  return tx
    .select()
    .from(entry)
    .where(
      and(
        eq(entry.garageId, garageId),
        eq(entry.carId, carId),
        inArray(entry.kind, [...kinds]),
        isNull(entry.removedAt),
      ),
    )
    .orderBy(asc(entry.on), asc(entry.recorded));
}

/**
 * Entries of these kinds of any car of the garage from a day on, by day and then as recorded, tombstones
 * left out.
 *
 * @param since civil date
 */
export function listEntriesSince(
  tx: Tx,
  garageId: string,
  kinds: readonly EntryKind[],
  since: string,
): Promise<EntryRow[]> {
  return tx
    .select()
    .from(entry)
    .where(
      and(
        eq(entry.garageId, garageId),
        gte(entry.on, since),
        inArray(entry.kind, [...kinds]),
        isNull(entry.removedAt),
      ),
    )
    .orderBy(asc(entry.on), asc(entry.recorded));
}

/** What else is recorded of a car on a day, tombstones left out. */
export function listEntriesOnDay(
  tx: Tx,
  garageId: string,
  carId: string,
  on: string,
): Promise<EntryRow[]> {
  return tx
    .select()
    .from(entry)
    .where(
      and(
        eq(entry.garageId, garageId),
        eq(entry.carId, carId),
        eq(entry.on, on),
        isNull(entry.removedAt),
      ),
    )
    .orderBy(asc(entry.recorded));
}
