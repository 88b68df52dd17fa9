import { listPutOffs, readGarage } from '@quartermark/db';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { garageViewOf } from '../garage/view-of.ts';
import type { PutOffView } from '../letter-views.ts';
import { notFoundHere } from '../refused.ts';
import type { Asker, World } from '../world.ts';

export const putOffListInput = z.strictObject({ garageId: id });

/** What the garage's letters do not tell for now, the soonest over first. */
export function putOffList(
  world: World,
  asker: Asker,
  { garageId }: z.output<typeof putOffListInput>,
): Promise<PutOffView> {
  return inGarage(world, asker, garageId, async (tx) => {
    const [row, rows] = await Promise.all([readGarage(tx, garageId), listPutOffs(tx, garageId)]);
    if (!row) throw notFoundHere('garage', 'garageId');
    const garage = garageViewOf(row, world.clock.now());
    const standing = rows.filter(({ until }) => until >= garage.today);
    return { garage, rows: standing.map(({ fact, until }) => ({ fact, until })) };
  });
}
