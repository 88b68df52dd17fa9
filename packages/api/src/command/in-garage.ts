import {
  type GarageOptions,
  type GarageRole,
  NotYours,
  type Tx,
  withGarage,
} from '@quartermark/db';
import { notFoundHere } from '../refused.ts';
import type { Asker, World } from '../world.ts';

/** Opens a garage for a person; a stranger is told what one is told whose garage does not exist. */
export async function inGarage<T>(
  world: World,
  asker: Asker,
  garageId: string,
  fn: (tx: Tx, role: GarageRole) => Promise<T>,
  options: GarageOptions = {},
): Promise<T> {
  try {
    const actor = { kind: 'user', userId: asker.userId } as const;
    return await withGarage(world.db, actor, garageId, fn, options);
  } catch (error) {
    if (error instanceof NotYours) throw notFoundHere('garage', 'garageId');
    throw error;
  }
}
