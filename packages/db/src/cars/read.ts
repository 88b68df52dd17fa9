import { and, asc, eq, inArray, isNull } from 'drizzle-orm';
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

/** Ids of all cars that are still in the garage, in id order. */
export async function listCarIds(tx: Tx, garageId: string): Promise<string[]> {
  const rows = await tx
    .select({ id: car.id })
    .from(car)
    .where(and(eq(car.garageId, garageId), isNull(car.removedAt)))
    .orderBy(asc(car.id));
  return rows.map((row) => row.id);
}

/** Names of cars by their ids, of those too that have left: what is on record still speaks of them. */
export async function namesOfCars(
  tx: Tx,
  garageId: string,
  carIds: readonly string[],
): Promise<Record<string, string>> {
  if (carIds.length === 0) return {};
  const rows = await tx
    .select({ id: car.id, name: car.name })
    .from(car)
    .where(and(eq(car.garageId, garageId), inArray(car.id, [...new Set(carIds)])));
  return Object.fromEntries(rows.map(({ id, name }) => [id, name]));
}
