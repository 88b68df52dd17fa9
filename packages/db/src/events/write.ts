import type { EventInput } from '@quartermark/engine/log';
import { and, eq, isNull, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { event } from '../schema.ts';

const days = (body: EventInput) => ({ startOn: body.start, endOn: body.end ?? body.start });

export type NewEvent = { garageId: string; id: string; body: EventInput; at: Date; by: string };

/** @returns false if the id is in use in this garage */
export async function insertEvent(tx: Tx, { garageId, id, body, at, by }: NewEvent) {
  const made = await tx
    .insert(event)
    .values({ garageId, id, body, ...days(body), changedAt: at, changedBy: by })
    .onConflictDoNothing()
    .returning({ id: event.id });
  return made.length === 1;
}

export type EventChange = {
  garageId: string;
  id: string;
  baseRevision: number;
  at: Date;
  by: string;
};

/** @returns the new revision; null if it is gone or was changed since */
export function changeEvent(tx: Tx, change: EventChange & { body: EventInput }) {
  return write(tx, change, { body: change.body, ...days(change.body) });
}

/** @returns as `changeEvent` */
export function removeEvent(tx: Tx, change: EventChange) {
  return write(tx, change, { removedAt: change.at });
}

async function write(
  tx: Tx,
  { garageId, id, baseRevision, at, by }: EventChange,
  set: Partial<typeof event.$inferInsert>,
): Promise<number | null> {
  const [changed] = await tx
    .update(event)
    .set({ ...set, revision: sql`${event.revision} + 1`, changedAt: at, changedBy: by })
    .where(
      and(
        eq(event.garageId, garageId),
        eq(event.id, id),
        eq(event.revision, baseRevision),
        isNull(event.removedAt),
      ),
    )
    .returning({ revision: event.revision });
  return changed?.revision ?? null;
}
