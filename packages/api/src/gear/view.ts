import { listGearRecords, readGarage, readGear, shelfOf } from '@quartermark/db';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { garageViewOf } from '../garage/view-of.ts';
import { notFoundHere } from '../refused.ts';
import type { GearView } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { carNames } from './car-names.ts';
import { gearRows } from './gear-rows.ts';

export const gearViewInput = z.strictObject({ garageId: id, gearId: id });

/** One component, piece of equipment or person. */
export function gearView(
  world: World,
  asker: Asker,
  { garageId, gearId }: z.output<typeof gearViewInput>,
): Promise<GearView> {
  return inGarage(
    world,
    asker,
    garageId,
    async (tx) => {
      const [row, piece] = [await readGarage(tx, garageId), await readGear(tx, garageId, gearId)];
      if (!row || !piece || piece.removedAt) throw notFoundHere('set, tool or person', 'gearId');
      const garage = garageViewOf(row, world.clock.now());
      const records = await listGearRecords(tx, garageId, [piece], garage.today);
      const rows = await gearRows(shelfOf(tx, row, garage.today), records, world.log);
      const [found] = rows;
      if (!found) throw new Error(`could not work out ${gearId}: it is there and gave no row`);
      return { garage, row: found, cars: await carNames(tx, garageId, rows) };
    },
    { isolation: 'repeatable read', readOnly: true },
  );
}
