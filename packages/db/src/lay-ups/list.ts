import { and, asc, eq, isNull } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { layUp } from '../schema.ts';

export type LayUpRow = typeof layUp.$inferSelect;

/** The car's storage windows, earliest first. */
export function listLayUps(tx: Tx, garageId: string, carId: string): Promise<LayUpRow[]> {
  return tx
    .select()
    .from(layUp)
    .where(and(eq(layUp.garageId, garageId), eq(layUp.carId, carId), isNull(layUp.removedAt)))
    .orderBy(asc(layUp.startOn), asc(layUp.id));
}
