import { endPutOff } from '@quartermark/db';
import { addDays } from '@quartermark/engine/calendar';
import { z } from 'zod';
import { commandFields } from '../asked.ts';
import { runCommand } from '../command/run-command.ts';
import { garageViewOf } from '../garage/view-of.ts';
import { notFoundHere } from '../refused.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const removePutOffInput = z.strictObject({
  ...commandFields,
  fact: z.string().min(1).max(300),
});

/** Has a fact told again from the next letter on. */
export function removePutOff(
  world: World,
  asker: Asker,
  input: z.output<typeof removePutOffInput>,
): Promise<Written> {
  return runCommand(world, asker, 'putOff.remove', input, async ({ tx, garage, now }) => {
    const yesterday = addDays(garageViewOf(garage, now).today, -1);
    if (!(await endPutOff(tx, garage.id, input.fact, yesterday)))
      throw notFoundHere('fact', 'fact');
    return { id: garage.id, revision: 0, version: 0 };
  });
}
