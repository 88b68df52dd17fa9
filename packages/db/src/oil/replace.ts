import type { OilLine } from '@quartermark/engine/display';
import type { Tx } from '../connect.ts';
import { oilLine } from '../oil-schema.ts';
import { columnsOf } from './columns.ts';

/**
 * Puts a car's line in place of the one it had. Call it only where its snapshot was written in the same
 * transaction: the guard of the snapshot is the guard of its line.
 */
export async function replaceOilLine(
  tx: Tx,
  { garageId, carId, line }: { garageId: string; carId: string; line: OilLine },
): Promise<void> {
  const set = columnsOf(line);
  await tx
    .insert(oilLine)
    .values({ garageId, carId, ...set })
    .onConflictDoUpdate({ target: [oilLine.garageId, oilLine.carId], set });
}
