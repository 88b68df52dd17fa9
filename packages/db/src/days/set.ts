import type { Tx } from '../connect.ts';
import { garageDay } from '../schema.ts';

/**
 * When the garage's next civil day begins; for a person who changes the zone. Whether a letter is due by the new
 * clocks is looked at anew.
 */
export async function setGarageDay(
  tx: Tx,
  row: { garageId: string; zone: string; nextDayAt: Date },
): Promise<void> {
  const { zone, nextDayAt } = row;
  const composeAt = new Date(0);
  await tx
    .insert(garageDay)
    .values(row)
    .onConflictDoUpdate({ target: garageDay.garageId, set: { zone, nextDayAt, composeAt } });
}
