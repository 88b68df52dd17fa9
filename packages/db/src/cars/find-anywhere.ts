import { and, isNull, or, sql } from 'drizzle-orm';
import type { Db } from '../connect.ts';
import { car, garageDay } from '../schema.ts';
import { withGarage } from '../with-garage.ts';

export type FoundCar = { garageId: string; carId: string; name: string; zone: string };

/**
 * The cars of all garages that have this id or this name (capitals aside). For whoever keeps the
 * installation; it goes through the garages one by one, as row-level security asks.
 */
export async function findCarsAnywhere(db: Db, idOrName: string): Promise<FoundCar[]> {
  const garages = await db.orm
    .select({ garageId: garageDay.garageId, zone: garageDay.zone })
    .from(garageDay);
  const found: FoundCar[] = [];
  for (const { garageId, zone } of garages) {
    const cars = await withGarage(db, { kind: 'job' }, garageId, (tx) =>
      tx
        .select({ carId: car.id, name: car.name })
        .from(car)
        .where(
          and(
            isNull(car.removedAt),
            or(
              sql`${car.id}::text = lower(${idOrName})`,
              sql`lower(${car.name}) = lower(${idOrName})`,
            ),
          ),
        ),
    );
    found.push(...cars.map((one) => ({ garageId, zone, ...one })));
  }
  return found;
}
