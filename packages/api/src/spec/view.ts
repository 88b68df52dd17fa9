import { readCar, readSpec } from '@quartermark/db';
import { specSheet } from '@quartermark/engine/log';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { notFoundHere } from '../refused.ts';
import type { SpecView } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const specViewInput = z.strictObject({ garageId: id, carId: id });

/** A car's spec sheet; an empty one of revision 0 while nobody has written it. */
export function specView(
  world: World,
  asker: Asker,
  { garageId, carId }: z.output<typeof specViewInput>,
): Promise<SpecView> {
  return inGarage(world, asker, garageId, async (tx) => {
    if (!(await readCar(tx, garageId, carId))) throw notFoundHere('car', 'carId');
    const row = await readSpec(tx, garageId, carId);
    if (!row) return { sheet: { lines: [] }, revision: 0 };
    return { sheet: specSheet.parse(row.body), revision: row.revision };
  });
}
