import { and, asc, eq, inArray, isNotNull, isNull } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import type { EntryRow } from '../entries/read.ts';
import type { ItemRow } from '../items/read.ts';
import { entry, gear, item } from '../schema.ts';

export type GearRow = typeof gear.$inferSelect;

/** One component, piece of equipment or person, a removed one included (`removedAt`). */
export async function readGear(tx: Tx, garageId: string, id: string): Promise<GearRow | null> {
  const [found] = await tx
    .select()
    .from(gear)
    .where(and(eq(gear.garageId, garageId), eq(gear.id, id)));
  return found ?? null;
}

/** All that is still there, as it was added. */
export function listGear(tx: Tx, garageId: string): Promise<GearRow[]> {
  return tx
    .select()
    .from(gear)
    .where(and(eq(gear.garageId, garageId), isNull(gear.removedAt)))
    .orderBy(asc(gear.addedAt), asc(gear.id));
}

/** Those who drive or help, by name; somebody who was removed is left out. */
export async function listPeople(
  tx: Tx,
  garageId: string,
): Promise<{ gearId: string; name: string }[]> {
  const rows = await tx
    .select({ gearId: gear.id, body: gear.body })
    .from(gear)
    .where(and(eq(gear.garageId, garageId), eq(gear.kind, 'person'), isNull(gear.removedAt)));
  return rows
    .map(({ gearId, body }) => ({ gearId, name: body.name }))
    .sort((a, b) => a.name.localeCompare(b.name, 'en') || a.gearId.localeCompare(b.gearId));
}

/** Those of these pieces that are still there, as they were added. */
export function listGearOf(tx: Tx, garageId: string, ids: readonly string[]): Promise<GearRow[]> {
  return tx
    .select()
    .from(gear)
    .where(and(eq(gear.garageId, garageId), inArray(gear.id, [...ids]), isNull(gear.removedAt)))
    .orderBy(asc(gear.addedAt), asc(gear.id));
}

/** Items of these pieces, each list in its own order, removed ones left out. */
export function listItemsOfGear(
  tx: Tx,
  garageId: string,
  gearIds: readonly string[],
): Promise<ItemRow[]> {
  return tx
    .select()
    .from(item)
    .where(
      and(eq(item.garageId, garageId), inArray(item.gearId, [...gearIds]), isNull(item.removedAt)),
    )
    .orderBy(asc(item.position), asc(item.id));
}

/** Entries about these pieces, tombstones included, as recorded. */
export function listEntriesOfGear(
  tx: Tx,
  garageId: string,
  gearIds: readonly string[],
): Promise<EntryRow[]> {
  return tx
    .select()
    .from(entry)
    .where(and(eq(entry.garageId, garageId), inArray(entry.gearId, [...gearIds])))
    .orderBy(asc(entry.recorded));
}

/** Pieces that were ever fitted to a car, by entries that stand. */
export async function listGearOnceOn(tx: Tx, garageId: string, carId: string): Promise<string[]> {
  const rows = await tx
    .selectDistinct({ id: entry.gearId })
    .from(entry)
    .where(
      and(
        eq(entry.garageId, garageId),
        eq(entry.carId, carId),
        eq(entry.kind, 'fit'),
        isNotNull(entry.gearId),
        isNull(entry.removedAt),
      ),
    );
  return rows.flatMap(({ id }) => id ?? []);
}
