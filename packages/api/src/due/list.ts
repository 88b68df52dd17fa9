import { dueCounts, dueList, readGarage } from '@quartermark/db';
import { civilDate } from '@quartermark/engine/log';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { readCursor, writeCursor } from '../cursor.ts';
import { garageViewOf } from '../garage/view-of.ts';
import { pageFields } from '../page-fields.ts';
import { notFoundHere } from '../refused.ts';
import type { DueList } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const dueListInput = z.strictObject({
  garageId: id,
  ...pageFields,
  sort: z.enum(['likely', 'early', 'car']).default('likely'),
  filter: z
    .strictObject({
      carId: id.optional(),
      state: z.enum(['overdue', 'dueSoon', 'unknown', 'fine']).optional(),
      /** on this day or before, by the likely day, or the early one where that sorts */
      before: civilDate.optional(),
      /** one of the three parts a list is made of, see `DuePart` */
      part: z.enum(['dated', 'apart', 'unsure']).optional(),
    })
    .default({}),
});

const place = z.tuple([z.boolean(), civilDate.nullable(), id, id]);

export const DUE_PAGE_SIZE = 50;

/** One page of what falls due in the garage. A car that is not here has no lines. */
export function listDue(
  world: World,
  asker: Asker,
  { garageId, cursor, sort, filter }: z.output<typeof dueListInput>,
): Promise<DueList> {
  const after = cursor ? placeOf(readCursor(place, cursor)) : null;
  return inGarage(world, asker, garageId, async (tx) => {
    // sent down one connection without waiting in between
    const [row, page, counts] = await Promise.all([
      readGarage(tx, garageId),
      dueList(tx, { garageId, sort, filter, after, limit: DUE_PAGE_SIZE }),
      dueCounts(tx, { garageId, carId: filter.carId }),
    ]);
    if (!row) throw notFoundHere('garage', 'garageId');
    const { next } = page;
    return {
      garage: garageViewOf(row, world.clock.now()),
      rows: page.rows,
      next: next && writeCursor([next.apart, next.key, next.carId, next.itemId]),
      counts,
    };
  });
}

const placeOf = ([apart, key, carId, itemId]: z.output<typeof place>) => ({
  apart,
  key,
  carId,
  itemId,
});
