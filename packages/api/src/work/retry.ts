import { readCar } from '@quartermark/db';
import { z } from 'zod';
import { commandFields, id } from '../asked.ts';
import { raise } from '../command/raise.ts';
import { runCommand } from '../command/run-command.ts';
import { notFoundHere } from '../refused.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const retryWorkInput = z.strictObject({ ...commandFields, carId: id });

/** Asks for a car's countdowns anew, at once: a new version does not wait for the next try of the old. */
export function retryWork(
  world: World,
  asker: Asker,
  input: z.output<typeof retryWorkInput>,
): Promise<Written> {
  return runCommand(world, asker, 'work.retry', input, async (writing) => {
    const car = await readCar(writing.tx, writing.garage.id, input.carId);
    if (!car) throw notFoundHere('car', 'carId');
    const version = await raise(writing, input.carId);
    return { id: input.carId, revision: car.revision, version };
  });
}
