import { and, asc, eq, isNull } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { car } from '../schema.ts';

export type CarRow = typeof car.$inferSelect;

/** A car that is still in the garage. */
export async function readCar(tx: Tx, garageId: string, carId: string): Promise<CarRow | null> {
  const [found] = await tx
    .select()
    .from(car)
    .where(and(eq(car.garageId, garageId), eq(car.id, carId), isNull(car.removedAt)));
  return found ?? null;
}

/** Whether a car is in the garage, or was before it was taken off the list. */
export async function isCarOf(tx: Tx, garageId: string, carId: string): Promise<boolean> {
  const found = await tx
    .select({ id: car.id })
    .from(car)
    .where(and(eq(car.garageId, garageId), eq(car.id, carId)));
  return found.length === 1;
}

/** Ids of all cars that are still in the garage, in id order. */
export async function listCarIds(tx: Tx, garageId: string): Promise<string[]> {
  const rows = await tx
    .select({ id: car.id })
    .from(car)
    .where(and(eq(car.garageId, garageId), isNull(car.removedAt)))
    .orderBy(asc(car.id));
  return rows.map((row) => row.id);
}
