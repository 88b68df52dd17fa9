import { and, asc, eq, inArray, isNull, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { wakeWorker } from '../garages/tell.ts';
import { car, carWork, outbox } from '../schema.ts';

export type WantedVersion = { carId: string; version: number };

/**
 * Raises the input versions of these cars, says that an answer for the new versions is wanted, and
 * leaves an outbox row for each: all in the caller's transaction, so that it happens with what was
 * written or not at all. Cars are taken in the order of their ids, so two of these never deadlock.
 *
 * @param cars ids, or `all` for every car of the garage that is not removed
 * @returns the new versions, by id; ids of no car here are left out
 */
export async function wantWork(
  tx: Tx,
  garageId: string,
  cars: readonly string[] | 'all',
): Promise<WantedVersion[]> {
  const which =
    cars === 'all'
      ? and(eq(car.garageId, garageId), isNull(car.removedAt))
      : and(eq(car.garageId, garageId), inArray(car.id, [...cars]));
  const locked = await tx
    .select({ id: car.id })
    .from(car)
    .where(which)
    .orderBy(asc(car.id))
    .for('no key update');
  if (locked.length === 0) return [];
  const ids = locked.map(({ id }) => id);
  const raised = await tx
    .update(car)
    .set({ inputVersion: sql`${car.inputVersion} + 1` })
    .where(and(eq(car.garageId, garageId), inArray(car.id, ids)))
    .returning({ carId: car.id, version: car.inputVersion });
  raised.sort((a, b) => (a.carId < b.carId ? -1 : 1));
  await want(tx, garageId, raised);
  return raised;
}

async function want(tx: Tx, garageId: string, raised: readonly WantedVersion[]): Promise<void> {
  await tx
    .insert(carWork)
    .values(raised.map(({ carId, version }) => ({ garageId, carId, wanted: version })))
    .onConflictDoUpdate({
      target: [carWork.garageId, carWork.carId],
      set: { wanted: sql`excluded.wanted`, nextTryAt: sql`now()` },
    });
  await tx
    .insert(outbox)
    .values(raised.map(({ carId, version }) => ({ garageId, carId, inputVersion: version })));
  await wakeWorker(tx);
}
