import { and, asc, desc, eq, gt, isNull, lte, type SQL, sql } from 'drizzle-orm';
import { unionAll } from 'drizzle-orm/pg-core';
import type { Tx } from '../connect.ts';
import { entry } from '../schema.ts';
import type { EntryRow } from './read.ts';

const EACH_SIDE = 20;

/**
 * Entries with an odometer value (or an exchange of the odometer) around a day: the last 20 that began
 * on or before it and the first 20 after it, in the order of day and record. Whoever compares a new
 * value with its neighbours needs no more of the log than this.
 */
export async function readingsNear(
  tx: Tx,
  garageId: string,
  carId: string,
  on: string,
): Promise<EntryRow[]> {
  const reads = sql`(${entry.body} -> 'odometer' is not null or ${entry.kind} = 'meterReplaced')`;
  const side = (where: SQL, order: SQL[]) =>
    tx
      .select()
      .from(entry)
      .where(
        and(
          eq(entry.garageId, garageId),
          eq(entry.carId, carId),
          isNull(entry.removedAt),
          reads,
          where,
        ),
      )
      .orderBy(...order)
      .limit(EACH_SIDE);
  const rows = await unionAll(
    side(lte(entry.on, on), [desc(entry.on), desc(entry.recorded)]),
    side(gt(entry.on, on), [asc(entry.on), asc(entry.recorded)]),
  );
  return rows.sort((a, b) => (a.on === b.on ? a.recorded - b.recorded : a.on < b.on ? -1 : 1));
}
