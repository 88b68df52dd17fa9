import { foundGarage as foundRow, type Tx } from '@quartermark/db';
import { nextMidnight } from '@quartermark/engine/calendar';
import type { GarageFields } from './fields.ts';

/**
 * A new garage, its first member, and when its next day begins; the caller's transaction is inside it
 * from then on. @returns false if the id is taken
 */
export function foundGarage(
  tx: Tx,
  id: string,
  fields: GarageFields,
  founder: { userId: string; role: string; demo: boolean; now: Date },
): Promise<boolean> {
  const { userId, role, demo, now } = founder;
  const nextDayAt = new Date(nextMidnight(now, fields.zone));
  return foundRow(tx, { id, ...fields, demo }, { userId, role, now, nextDayAt });
}
