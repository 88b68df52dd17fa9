import { compareOil, overviewCounts, readGarage } from '@quartermark/db';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { readCursor, writeCursor } from '../cursor.ts';
import { garageViewOf } from '../garage/view-of.ts';
import { pageFields } from '../page-fields.ts';
import { notFoundHere } from '../refused.ts';
import type { OilComparedPage } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const oilCompareInput = z.strictObject({ garageId: id, ...pageFields });

const place = z.strictObject({
  worse: z.number().nullable(),
  road: z.number().nullable(),
  carId: id,
});

const PAGE_SIZE = 50;

/** One page of the garage's cars by their oil, those that got worse first; read from what is stored. */
export function oilCompare(
  world: World,
  asker: Asker,
  { garageId, cursor }: z.output<typeof oilCompareInput>,
): Promise<OilComparedPage> {
  const after = cursor ? readCursor(place, cursor) : null;
  return inGarage(world, asker, garageId, async (tx) => {
    // sent down one connection without waiting in between
    const [garage, page, { cars }] = await Promise.all([
      readGarage(tx, garageId),
      compareOil(tx, { garageId, after, limit: PAGE_SIZE }),
      overviewCounts(tx, garageId),
    ]);
    if (!garage) throw notFoundHere('garage', 'garageId');
    return {
      garage: garageViewOf(garage, world.clock.now()),
      rows: page.rows,
      next: page.next && writeCursor(page.next),
      cars,
    };
  });
}
