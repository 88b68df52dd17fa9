import { and, asc, count, eq, isNull, sql } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { car } from '../schema.ts';

export type CarOfPage = { carId: string; name: string };

/**
 * Some of the garage's cars, by name; with a car's id that one alone.
 *
 * @param after the last car of the page before
 */
export async function carPage(
  tx: Tx,
  question: { garageId: string; after: string | null; limit: number; carId?: string | undefined },
): Promise<{ cars: CarOfPage[]; next: string | null; total: number }> {
  const { garageId, after, limit, carId } = question;
  const here = and(
    eq(car.garageId, garageId),
    isNull(car.removedAt),
    carId === undefined ? undefined : eq(car.id, carId),
  );
  // a car taken off the list keeps its name, so a page that follows is still found
  const beyond =
    after === null
      ? undefined
      : sql`(${car.name}, ${car.id}) > (select name, id from car where garage_id = ${garageId} and id = ${after}::uuid)`;
  // sent down one connection without waiting in between
  const [rows, [all]] = await Promise.all([
    tx
      .select({ carId: car.id, name: car.name })
      .from(car)
      .where(and(here, beyond))
      .orderBy(asc(car.name), asc(car.id))
      .limit(limit + 1),
    tx.select({ cars: count() }).from(car).where(here),
  ]);
  const cars = rows.slice(0, limit);
  const last = cars.at(-1);
  return {
    cars,
    next: rows.length > limit && last ? last.carId : null,
    total: all?.cars ?? 0,
  };
}
