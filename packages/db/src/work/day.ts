import { and, asc, eq, gt, isNull, lte, sql } from 'drizzle-orm';
import type { Db, Tx } from '../connect.ts';
import { car, carWork, garageDay, snapshot } from '../schema.ts';

export type DueGarage = { garageId: string; zone: string };

/** Garages whose next civil day has begun, by id. @param after the last id of the page before */
export function garagesDue(
  db: Db,
  now: Date,
  page: { after: string | null; limit: number },
): Promise<DueGarage[]> {
  return db.orm
    .select({ garageId: garageDay.garageId, zone: garageDay.zone })
    .from(garageDay)
    .where(
      and(
        lte(garageDay.nextDayAt, now),
        page.after === null ? undefined : gt(garageDay.garageId, page.after),
      ),
    )
    .orderBy(asc(garageDay.garageId))
    .limit(page.limit);
}

/** The garage's zone as the day is reckoned by; null for a garage that has none yet. */
export async function dayZone(db: Db, garageId: string): Promise<string | null> {
  const [row] = await db.orm
    .select({ zone: garageDay.zone })
    .from(garageDay)
    .where(eq(garageDay.garageId, garageId));
  return row?.zone ?? null;
}

/** Sets when the next day begins, unless the zone was changed in between. */
export async function setNextDay(db: Db, garage: DueGarage, nextDayAt: Date): Promise<void> {
  await db.orm
    .update(garageDay)
    .set({ nextDayAt })
    .where(and(eq(garageDay.garageId, garage.garageId), eq(garageDay.zone, garage.zone)));
}

/**
 * Cars whose answer is of an earlier day than `day`: `due` can be done now, `resting` failed a while ago
 * and wait for their next try.
 */
export async function carsBehindDay(
  tx: Tx,
  garageId: string,
  day: string,
): Promise<{ due: string[]; resting: number }> {
  const rows = await tx
    .select({
      carId: car.id,
      resting: sql<boolean>`coalesce(${carWork.attempts} > 0 and ${carWork.nextTryAt} > now(), false)`,
    })
    .from(car)
    .leftJoin(snapshot, and(eq(snapshot.garageId, car.garageId), eq(snapshot.carId, car.id)))
    .leftJoin(carWork, and(eq(carWork.garageId, car.garageId), eq(carWork.carId, car.id)))
    .where(
      and(
        eq(car.garageId, garageId),
        isNull(car.removedAt),
        sql`coalesce(${snapshot.asOf} < ${day}::date, true)`,
      ),
    )
    .orderBy(asc(car.id));
  const due = rows.filter((row) => !row.resting).map((row) => row.carId);
  return { due, resting: rows.length - due.length };
}
