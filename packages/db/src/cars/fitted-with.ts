import { and, eq, ne, sql } from 'drizzle-orm';
import { alias } from 'drizzle-orm/pg-core';
import type { Tx } from '../connect.ts';
import { listEntriesOfGear } from '../gear/read.ts';
import { fittedOn } from '../gear/windows-of.ts';
import { entry } from '../schema.ts';

/**
 * The cars on which these pieces are at the end of a day, each once.
 *
 * @param today civil date in the garage's zone
 */
export async function carsFittedWith(
  tx: Tx,
  garageId: string,
  gearIds: readonly string[],
  today: string,
): Promise<string[]> {
  if (gearIds.length === 0) return [];
  const rows = await listEntriesOfGear(tx, garageId, gearIds);
  const cars = gearIds.flatMap((id) => {
    const own = rows.filter(({ gearId }) => gearId === id);
    return fittedOn(own, today)?.car ?? [];
  });
  return [...new Set(cars)];
}

/**
 * Other cars that now carry a part that was on this one: what happened here is part of its life.
 *
 * @param today civil date in the garage's zone
 */
export async function carsWithPartsOf(
  tx: Tx,
  garageId: string,
  carId: string,
  today: string,
): Promise<string[]> {
  const [here, there] = [alias(entry, 'here'), alias(entry, 'there')];
  const rows = await tx
    .selectDistinct({ gearId: here.gearId })
    .from(here)
    .innerJoin(
      there,
      and(
        eq(there.garageId, here.garageId),
        eq(there.gearId, here.gearId),
        eq(there.kind, 'fit'),
        ne(there.carId, here.carId),
      ),
    )
    .where(and(eq(here.garageId, garageId), eq(here.carId, carId), sql`${here.kind} = 'fit'`));
  const moved = rows.flatMap(({ gearId }) => gearId ?? []);
  const cars = await carsFittedWith(tx, garageId, moved, today);
  return cars.filter((id) => id !== carId);
}
