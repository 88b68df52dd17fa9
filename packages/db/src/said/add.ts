import { addDays, weekday } from '@quartermark/engine/calendar';
import type { SaidLine } from '@quartermark/engine/said';
import type { Tx } from '../connect.ts';
import { said } from '../due-schema.ts';

/**
 * Keeps what was said of a car's items: the first of an ISO week stands, later ones of that week change
 * nothing. Call it only where the snapshot that says so was written in the same transaction.
 */
export async function addSaid(
  tx: Tx,
  garageId: string,
  carId: string,
  lines: readonly SaidLine[],
): Promise<void> {
  if (lines.length === 0) return;
  const rows = lines.map(({ item, car: _car, afterwards: _afterwards, ...line }) => ({
    ...line,
    garageId,
    carId,
    itemId: item,
    week: addDays(line.saidOn, 1 - weekday(line.saidOn)),
  }));
  await tx.insert(said).values(rows).onConflictDoNothing();
}
