import { insertPlannedLayUp, readCar } from '@quartermark/db';
import { plannedLayUp } from '@quartermark/engine/log';
import { z } from 'zod';
import { commandFields, id } from '../asked.ts';
import { raiseCars } from '../command/raise-cars.ts';
import { runCommand, type Writing } from '../command/run-command.ts';
import { notFoundHere, refuse } from '../refused.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const addPlannedLayUpInput = z.strictObject({
  ...commandFields,
  carId: id,
  layUpId: id,
  layUp: plannedLayUp,
});

type AddPlannedLayUp = z.output<typeof addPlannedLayUpInput>;

/** Plans a lay-up of a car. It says nothing of what has happened: that is an entry of the log. */
export function addPlannedLayUp(
  world: World,
  asker: Asker,
  input: AddPlannedLayUp,
): Promise<Written> {
  return runCommand(world, asker, 'plannedLayUp.add', input, async (writing) => {
    const { tx, garage } = writing;
    if (!(await readCar(tx, garage.id, input.carId))) throw notFoundHere('car', 'carId');
    await writePlannedLayUp(writing, input);
    const version = await raiseCars(writing, [input.carId]);
    return { id: input.layUpId, revision: 1, version };
  });
}

/** The writing part, without raising anything. */
export async function writePlannedLayUp(
  { tx, garage, now, by }: Writing,
  { carId, layUpId, layUp }: Pick<AddPlannedLayUp, 'carId' | 'layUpId' | 'layUp'>,
): Promise<void> {
  const made = { garageId: garage.id, id: layUpId, carId, layUp, at: now, by };
  if (!(await insertPlannedLayUp(tx, made)))
    throw refuse('idInUse', 'layUpId', 'This lay-up is planned already; open it in the calendar.');
}
