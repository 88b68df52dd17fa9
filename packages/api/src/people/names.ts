import { driverNames } from '@quartermark/db';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import type { Asker, World } from '../world.ts';

export const peopleNamesInput = z.strictObject({ garageId: id });

const NAMES_MAX = 200;

/** Names of those who drive here, the last one first. */
export function peopleNames(
  world: World,
  asker: Asker,
  { garageId }: z.output<typeof peopleNamesInput>,
): Promise<string[]> {
  return inGarage(world, asker, garageId, (tx) => driverNames(tx, garageId, null, NAMES_MAX));
}
