import { complainTo, type EventsRoom, openEventsRoom, readGarage, type Tx } from '@quartermark/db';
import { garageViewOf } from '../../garage/view-of.ts';
import type { GarageView } from '../../views.ts';
import type { World } from '../../world.ts';

/** What the pages of a garage's events share, with the garage as its pages show it. */
export type Room = EventsRoom & { world: World; garage: GarageView };

/**
 * Call in a `repeatable read` transaction, or with the garage locked.
 *
 * @returns null if there is no such garage
 */
export async function openRoom(world: World, tx: Tx, garageId: string): Promise<Room | null> {
  const row = await readGarage(tx, garageId);
  if (!row) return null;
  const garage = garageViewOf(row, world.clock.now());
  const shared = await openEventsRoom(tx, row, garage.today, complainTo(world.log));
  return { ...shared, world, garage };
}
