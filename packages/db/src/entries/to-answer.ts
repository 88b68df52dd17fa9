import { and, asc, eq, getTableColumns, inArray, isNotNull, isNull, or, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { car, entry, gear } from '../schema.ts';
import type { EntryRow } from './read.ts';

/** An entry with the names of what it is about; null where it is about none. */
export type RowToAnswer = EntryRow & { carName: string | null; gearName: string | null };

/**
 * Findings, incidents and answers of the whole garage, as recorded; tombstones, and what is about a car
 * or piece that was taken off the list, left out.
 */
export function listToAnswer(tx: Tx, garageId: string): Promise<RowToAnswer[]> {
  return tx
    .select({
      ...getTableColumns(entry),
      carName: car.name,
      gearName: sql<string | null>`${gear.body} ->> 'name'`,
    })
    .from(entry)
    .leftJoin(car, and(eq(car.garageId, entry.garageId), eq(car.id, entry.carId)))
    .leftJoin(gear, and(eq(gear.garageId, entry.garageId), eq(gear.id, entry.gearId)))
    .where(
      and(
        eq(entry.garageId, garageId),
        inArray(entry.kind, ['finding', 'incident', 'answer']),
        isNull(entry.removedAt),
        isNull(car.removedAt),
        // what is about a car outlives the part it is about as well
        or(isNotNull(entry.carId), isNull(gear.removedAt)),
      ),
    )
    .orderBy(asc(entry.recorded));
}
