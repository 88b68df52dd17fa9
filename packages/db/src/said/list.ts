import type { SaidLine } from '@quartermark/engine/said';
import { and, asc, eq } from 'drizzle-orm';
import type { Tx } from '../connect.ts';
import { said } from '../due-schema.ts';

/** What was ever said of a car's items, oldest first. */
export async function listSaid(tx: Tx, garageId: string, carId: string): Promise<SaidLine[]> {
  const rows = await tx
    .select()
    .from(said)
    .where(and(eq(said.garageId, garageId), eq(said.carId, carId)))
    .orderBy(asc(said.saidOn), asc(said.itemId));
  return rows.map(({ garageId: _garageId, carId: car, itemId: item, week: _week, ...line }) => ({
    ...line,
    car,
    item,
    afterwards: false,
  }));
}
