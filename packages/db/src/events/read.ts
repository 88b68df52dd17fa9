import { and, asc, desc, eq, gte, isNull, lt, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { event } from '../schema.ts';

export type EventRow = typeof event.$inferSelect;

/** One event, a removed one included (`removedAt`). */
export async function readEvent(tx: Tx, garageId: string, id: string): Promise<EventRow | null> {
  const [found] = await tx
    .select()
    .from(event)
    .where(and(eq(event.garageId, garageId), eq(event.id, id)));
  return found ?? null;
}

/**
 * Events that end on a day or later, by start.
 *
 * @param since civil date in the garage's zone
 */
export function listEvents(tx: Tx, garageId: string, since: string): Promise<EventRow[]> {
  return tx
    .select()
    .from(event)
    .where(and(eq(event.garageId, garageId), gte(event.endOn, since), isNull(event.removedAt)))
    .orderBy(asc(event.startOn), asc(event.id));
}

/**
 * Events that ended before a day, the last first.
 *
 * @param today civil date in the garage's zone
 */
export function listEventsOver(
  tx: Tx,
  garageId: string,
  today: string,
  limit: number,
): Promise<EventRow[]> {
  return tx
    .select()
    .from(event)
    .where(and(eq(event.garageId, garageId), lt(event.endOn, today), isNull(event.removedAt)))
    .orderBy(desc(event.endOn), desc(event.startOn), asc(event.id))
    .limit(limit);
}

/**
 * Events that name a car and end on a day or later, by start.
 *
 * @param since civil date in the garage's zone
 */
export function listEventsOfCar(
  tx: Tx,
  garageId: string,
  carId: string,
  since: string,
): Promise<EventRow[]> {
  return tx
    .select()
    .from(event)
    .where(
      and(
        eq(event.garageId, garageId),
        gte(event.endOn, since),
        isNull(event.removedAt),
        sql`${event.body} -> 'cars' @> ${JSON.stringify([carId])}::jsonb`,
      ),
    )
    .orderBy(asc(event.startOn), asc(event.id));
}
