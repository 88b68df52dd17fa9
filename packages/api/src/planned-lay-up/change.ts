import { changePlannedLayUp as changeRow } from '@quartermark/db';
import { plannedLayUp } from '@quartermark/engine/log';
import { z } from 'zod';
import { baseRevision, commandFields, id } from '../asked.ts';
import { raiseCars } from '../command/raise-cars.ts';
import { runCommand } from '../command/run-command.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { standingPlannedLayUp } from './standing.ts';

export const changePlannedLayUpInput = z.strictObject({
  ...commandFields,
  layUpId: id,
  baseRevision,
  layUp: plannedLayUp,
});

/** Changes the days of a planned lay-up; its car stays. */
export function changePlannedLayUp(
  world: World,
  asker: Asker,
  input: z.output<typeof changePlannedLayUpInput>,
): Promise<Written> {
  return runCommand(world, asker, 'plannedLayUp.change', input, async (writing) => {
    const { tx, garage, now, by } = writing;
    const { layUpId, layUp, baseRevision } = input;
    const { carId } = await standingPlannedLayUp(writing, layUpId, baseRevision);
    const change = { garageId: garage.id, id: layUpId, baseRevision, layUp, at: now, by };
    const revision = await changeRow(tx, change);
    if (revision === null)
      throw new Error(`could not change planned lay-up ${layUpId}: it changed in a locked garage`);
    return { id: layUpId, revision, version: await raiseCars(writing, [carId]) };
  });
}
