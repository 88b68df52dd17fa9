import type { Tx } from '../connect.ts';
import { garageDay } from '../schema.ts';

/** When the garage's next civil day begins; for a person who changes the zone. */
export async function setGarageDay(tx: Tx, row: typeof garageDay.$inferInsert): Promise<void> {
  const { zone, nextDayAt } = row;
  await tx
    .insert(garageDay)
    .values(row)
    .onConflictDoUpdate({ target: garageDay.garageId, set: { zone, nextDayAt } });
}
