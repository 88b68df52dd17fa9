import { removePlannedLayUp as removeRow } from '@quartermark/db';
import { z } from 'zod';
import { baseRevision, commandFields, id } from '../asked.ts';
import { raiseCars } from '../command/raise-cars.ts';
import { runCommand } from '../command/run-command.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { standingPlannedLayUp } from './standing.ts';

export const removePlannedLayUpInput = z.strictObject({
  ...commandFields,
  layUpId: id,
  baseRevision,
});

/** Drops the plan of a lay-up. */
export function removePlannedLayUp(
  world: World,
  asker: Asker,
  input: z.output<typeof removePlannedLayUpInput>,
): Promise<Written> {
  return runCommand(world, asker, 'plannedLayUp.remove', input, async (writing) => {
    const { tx, garage, now, by } = writing;
    const { layUpId, baseRevision } = input;
    const { carId } = await standingPlannedLayUp(writing, layUpId, baseRevision);
    const change = { garageId: garage.id, id: layUpId, baseRevision, at: now, by };
    const revision = await removeRow(tx, change);
    if (revision === null)
      throw new Error(`could not remove planned lay-up ${layUpId}: it changed in a locked garage`);
    return { id: layUpId, revision, version: await raiseCars(writing, [carId]) };
  });
}
