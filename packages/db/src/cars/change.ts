import type { CarInput } from '@quartermark/engine/log';
import { and, eq, isNull, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { car } from '../schema.ts';

export type CarChange = {
  garageId: string;
  id: string;
  baseRevision: number;
  car: CarInput;
  at: Date;
  by: string;
};

/** @returns the new revision; null if the car is gone or was changed since `baseRevision` */
export async function changeCar(tx: Tx, change: CarChange): Promise<number | null> {
  const { name, unit, odoDigits, profile } = change.car;
  const [changed] = await tx
    .update(car)
    .set({
      name,
      unit,
      odoDigits: odoDigits ?? null,
      profile,
      revision: sql`${car.revision} + 1`,
      changedAt: change.at,
      changedBy: change.by,
    })
    .where(
      and(
        eq(car.garageId, change.garageId),
        eq(car.id, change.id),
        eq(car.revision, change.baseRevision),
        isNull(car.removedAt),
      ),
    )
    .returning({ revision: car.revision });
  return changed?.revision ?? null;
}
