import type { CarInput } from '@quartermark/engine/log';
import type { Tx } from '../connect.ts';
import { car } from '../schema.ts';

export type NewCar = { garageId: string; id: string; car: CarInput; at: Date; by: string };

/**
 * Adds a car at input version 1: `raiseInputVersions` is not needed, wanting version 1 is.
 *
 * @returns false if the id is in use in this garage
 */
export async function insertCar(tx: Tx, { garageId, id, car: input, at, by }: NewCar) {
  const { name, unit, odoDigits, profile } = input;
  const made = await tx
    .insert(car)
    .values({
      garageId,
      id,
      name,
      unit,
      odoDigits: odoDigits ?? null,
      profile,
      addedAt: at,
      changedAt: at,
      changedBy: by,
    })
    .onConflictDoNothing()
    .returning({ id: car.id });
  return made.length === 1;
}
