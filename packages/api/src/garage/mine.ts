import { listMyGarages } from '@quartermark/db';
import type { GarageView } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { garageViewOf } from './view-of.ts';

/** The garages somebody may enter, by name. */
export async function garageMine(world: World, asker: Asker): Promise<GarageView[]> {
  const now = world.clock.now();
  const rows = await listMyGarages(world.db, asker.userId);
  return rows.map((row) => garageViewOf(row, now));
}
