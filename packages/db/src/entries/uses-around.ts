import { and, asc, eq, exists, inArray, isNull, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { entry, event } from '../schema.ts';
import type { EntryRow } from './read.ts';

/** A trip may begin and end so many days beside the event it belongs to. */
const BESIDE_DAYS = 14;

/** Uses of any car of the garage around the days of these events, by day and then as recorded. */
export function listUsesAround(
  tx: Tx,
  garageId: string,
  eventIds: readonly string[],
): Promise<EntryRow[]> {
  const around = tx
    .select({ id: event.id })
    .from(event)
    .where(
      and(
        eq(event.garageId, garageId),
        inArray(event.id, [...eventIds]),
        sql`${entry.on} between ${event.startOn} - ${BESIDE_DAYS}::int and ${event.endOn} + ${BESIDE_DAYS}::int`,
      ),
    );
  return tx
    .select()
    .from(entry)
    .where(
      and(
        eq(entry.garageId, garageId),
        inArray(entry.kind, ['drive', 'session', 'strip']),
        isNull(entry.removedAt),
        exists(around),
      ),
    )
    .orderBy(asc(entry.on), asc(entry.recorded));
}
