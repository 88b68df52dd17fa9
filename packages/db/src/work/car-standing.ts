import { and, eq } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { car, garage, snapshot } from '../schema.ts';

/** Where a car stands: what its answer should rest on, and what the stored one does rest on. */
export type CarStanding = {
  inputVersion: number;
  removed: boolean;
  zone: string;
  volumeUnit: 'l' | 'usQt' | 'impQt';
  stored: {
    inputVersion: number;
    engineVersion: number;
    snapshotSchema: number;
    asOf: string;
  } | null;
};

/** @returns null for a car that is not here */
export async function carStanding(
  tx: Tx,
  garageId: string,
  carId: string,
): Promise<CarStanding | null> {
  const [row] = await tx
    .select({
      inputVersion: car.inputVersion,
      removedAt: car.removedAt,
      zone: garage.zone,
      volumeUnit: garage.volumeUnit,
      stored: {
        inputVersion: snapshot.inputVersion,
        engineVersion: snapshot.engineVersion,
        snapshotSchema: snapshot.snapshotSchema,
        asOf: snapshot.asOf,
      },
    })
    .from(car)
    .innerJoin(garage, eq(garage.id, car.garageId))
    .leftJoin(snapshot, and(eq(snapshot.garageId, car.garageId), eq(snapshot.carId, car.id)))
    .where(and(eq(car.garageId, garageId), eq(car.id, carId)));
  if (!row) return null;
  const { removedAt, ...rest } = row;
  return { ...rest, removed: removedAt !== null };
}
