import { type OverviewCar, overviewCounts, overviewPage, readGarage } from '@quartermark/db';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { readCursor, writeCursor } from '../cursor.ts';
import { failureViewOf } from '../failure-view-of.ts';
import { pageFields } from '../page-fields.ts';
import { notFoundHere } from '../refused.ts';
import type { OverviewPage, OverviewRow } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { garageViewOf } from './view-of.ts';

export const garageOverviewInput = z.strictObject({
  garageId: id,
  ...pageFields,
});

const place = z.strictObject({ urgency: z.int().nullable(), carId: id });

export const OVERVIEW_PAGE_SIZE = 50;

/** One page of the garage's cars, those that need a hand first. */
export function garageOverview(
  world: World,
  asker: Asker,
  { garageId, cursor }: z.output<typeof garageOverviewInput>,
): Promise<OverviewPage> {
  const after = cursor ? readCursor(place, cursor) : null;
  return inGarage(world, asker, garageId, async (tx) => {
    // sent down one connection without waiting in between
    const [garage, page, counts] = await Promise.all([
      readGarage(tx, garageId),
      overviewPage(tx, { garageId, after, limit: OVERVIEW_PAGE_SIZE }),
      overviewCounts(tx, garageId),
    ]);
    if (!garage) throw notFoundHere('garage', 'garageId');
    return {
      garage: garageViewOf(garage, world.clock.now()),
      rows: page.rows.map(rowOf),
      next: page.next && writeCursor(page.next),
      ...counts,
    };
  });
}

function rowOf({ urgency: _urgency, computedAt, failure, ...car }: OverviewCar): OverviewRow {
  return {
    ...car,
    computedAt: computedAt?.toISOString() ?? null,
    failure: failureViewOf(failure),
  };
}
