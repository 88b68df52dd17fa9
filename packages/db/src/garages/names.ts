import { and, eq, inArray } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { car, gear, item } from '../schema.ts';

/** Names of cars, of pieces and people, and of items, by id; what was removed keeps its name. */
export async function namesOfThings(
  tx: Tx,
  garageId: string,
  ids: readonly string[],
): Promise<Record<string, string>> {
  const wanted = [...new Set(ids)];
  if (wanted.length === 0) return {};
  const [cars, pieces, items] = await Promise.all([
    tx
      .select({ id: car.id, name: car.name })
      .from(car)
      .where(and(eq(car.garageId, garageId), inArray(car.id, wanted))),
    tx
      .select({ id: gear.id, body: gear.body })
      .from(gear)
      .where(and(eq(gear.garageId, garageId), inArray(gear.id, wanted))),
    tx
      .select({ id: item.id, body: item.body })
      .from(item)
      .where(and(eq(item.garageId, garageId), inArray(item.id, wanted))),
  ]);
  const named = [...pieces, ...items].map(({ id, body }) => ({ id, name: body.name }));
  return Object.fromEntries([...cars, ...named].map(({ id, name }) => [id, name]));
}
