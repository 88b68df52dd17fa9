import { listGear, listGearRecords, readGarage, shelfOf } from '@quartermark/db';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { garageViewOf } from '../garage/view-of.ts';
import { notFoundHere } from '../refused.ts';
import type { GearList } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { carNames } from './car-names.ts';
import { gearRows } from './gear-rows.ts';

export const gearListInput = z.strictObject({ garageId: id });

/** Everything that is kept beside the cars: components, equipment, people. */
export function gearList(
  world: World,
  asker: Asker,
  { garageId }: z.output<typeof gearListInput>,
): Promise<GearList> {
  return inGarage(
    world,
    asker,
    garageId,
    async (tx) => {
      const row = await readGarage(tx, garageId);
      if (!row) throw notFoundHere('garage', 'garageId');
      const garage = garageViewOf(row, world.clock.now());
      const pieces = await listGear(tx, garageId);
      const records = await listGearRecords(tx, garageId, pieces, garage.today);
      const rows = await gearRows(shelfOf(tx, row, garage.today), records, world.log);
      return { garage, rows, cars: await carNames(tx, garageId, rows) };
    },
    { isolation: 'repeatable read', readOnly: true },
  );
}
