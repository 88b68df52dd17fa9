import { eq, lt, or, sql } from 'drizzle-orm';
import type { Db } from '../connect.ts';
import { carWork } from '../schema.ts';

/** How many cars, over all garages, rest on less than is wanted or on an older engine. */
export async function pendingWork(db: Db, engineVersion: number): Promise<number> {
  const [row] = await db.orm
    .select({ cars: sql<number>`count(*)::int` })
    .from(carWork)
    .where(or(lt(carWork.done, carWork.wanted), lt(carWork.doneEngine, engineVersion)));
  return row?.cars ?? 0;
}

/** The garages that have a car of this id; ids are unique within a garage only. */
export async function garagesOfCar(db: Db, carId: string): Promise<string[]> {
  const rows = await db.orm
    .select({ garageId: carWork.garageId })
    .from(carWork)
    .where(eq(carWork.carId, carId));
  return rows.map((row) => row.garageId);
}
