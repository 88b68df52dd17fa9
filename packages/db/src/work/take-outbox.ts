import { asc, inArray, isNull, lt, sql } from 'drizzle-orm';
import type { Db } from '../connect.ts';
import { outbox } from '../schema.ts';

export type OutboxRow = { id: number; garageId: string; carId: string; inputVersion: number };

/**
 * Takes the oldest unpublished rows that nobody else is at, hands them to `publish`, and marks them only
 * after it has resolved. If it throws, or the process dies, they are as they were.
 *
 * @returns how many rows were taken; fewer than `limit` means that there are no more
 */
export function takeOutbox(
  db: Db,
  limit: number,
  publish: (rows: OutboxRow[]) => Promise<void>,
): Promise<number> {
  return db.orm.transaction(async (tx) => {
    const rows = await tx
      .select({
        id: outbox.id,
        garageId: outbox.garageId,
        carId: outbox.carId,
        inputVersion: outbox.inputVersion,
      })
      .from(outbox)
      .where(isNull(outbox.publishedAt))
      .orderBy(asc(outbox.id))
      .limit(limit)
      .for('update', { skipLocked: true });
    if (rows.length === 0) return 0;
    await publish(rows);
    await tx
      .update(outbox)
      .set({ publishedAt: sql`now()` })
      .where(
        inArray(
          outbox.id,
          rows.map(({ id }) => id),
        ),
      );
    return rows.length;
  });
}

/** Forgets rows that were published more than a day ago. */
export async function pruneOutbox(db: Db): Promise<void> {
  await db.orm.delete(outbox).where(lt(outbox.publishedAt, sql`now() - interval '1 day'`));
}
