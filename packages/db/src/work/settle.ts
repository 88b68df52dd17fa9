import { and, eq, sql } from 'drizzle-orm';
import { SNAPSHOT_CHANNEL, type SnapshotNotice } from '../channels.ts';
import type { Tx } from '../connect.ts';
import { dueLine } from '../due-schema.ts';
import { oilLine } from '../oil-schema.ts';
import { carWork, failure, snapshot, snapshotDetail } from '../schema.ts';

/**
 * After a recompute: what is done is what the stored snapshot rests on (which may be another worker's,
 * later than one's own), the failure is over, and, if something was written, listeners hear of it.
 */
export async function settleWork(
  tx: Tx,
  { garageId, carId, written }: { garageId: string; carId: string; written: boolean },
): Promise<void> {
  const [done] = await tx
    .select({ version: snapshot.inputVersion, engineVersion: snapshot.engineVersion })
    .from(snapshot)
    .where(and(eq(snapshot.garageId, garageId), eq(snapshot.carId, carId)));
  if (!done) return;
  await tx
    .update(carWork)
    .set({
      done: done.version,
      doneEngine: done.engineVersion,
      attempts: 0,
      nextTryAt: sql`now()`,
    })
    .where(and(eq(carWork.garageId, garageId), eq(carWork.carId, carId)));
  await tx.delete(failure).where(and(eq(failure.garageId, garageId), eq(failure.carId, carId)));
  if (written) await tellSnapshot(tx, { g: garageId, c: carId, v: done.version });
}

/** A removed car has no answer, and nothing is left to do for it. */
export async function dropAnswer(
  tx: Tx,
  car: { garageId: string; carId: string; version: number },
): Promise<void> {
  const { garageId, carId, version } = car;
  for (const table of [dueLine, oilLine, snapshotDetail, snapshot, failure])
    await tx.delete(table).where(and(eq(table.garageId, garageId), eq(table.carId, carId)));
  await tx
    .delete(carWork)
    .where(
      and(
        eq(carWork.garageId, garageId),
        eq(carWork.carId, carId),
        sql`${carWork.wanted} <= ${version}::bigint`,
      ),
    );
  await tellSnapshot(tx, { g: garageId, c: carId, v: version });
}

/** A recompute has failed for good: leaves what a person can see, and when it is tried again. */
export async function failWork(
  tx: Tx,
  car: { garageId: string; carId: string },
  failed: { cause: string; tries: number; restMs: (failures: number) => number },
): Promise<void> {
  const { garageId, carId } = car;
  const [work] = await tx
    .update(carWork)
    .set({ attempts: sql`${carWork.attempts} + 1` })
    .where(and(eq(carWork.garageId, garageId), eq(carWork.carId, carId)))
    .returning({ failures: carWork.attempts, wanted: carWork.wanted });
  if (!work) return;
  const restMs = failed.restMs(work.failures);
  await tx
    .update(carWork)
    .set({ nextTryAt: sql`now() + ${restMs}::int * interval '1 millisecond'` })
    .where(and(eq(carWork.garageId, garageId), eq(carWork.carId, carId)));
  await tx
    .insert(failure)
    .values({ garageId, carId, since: sql`now()`, attempts: failed.tries, cause: failed.cause })
    .onConflictDoUpdate({
      target: [failure.garageId, failure.carId],
      set: { attempts: sql`${failure.attempts} + excluded.attempts`, cause: sql`excluded.cause` },
    });
  await tellSnapshot(tx, { g: garageId, c: carId, v: work.wanted });
}

async function tellSnapshot(tx: Tx, notice: SnapshotNotice): Promise<void> {
  await tx.execute(sql`select pg_notify(${SNAPSHOT_CHANNEL}, ${JSON.stringify(notice)})`);
}
