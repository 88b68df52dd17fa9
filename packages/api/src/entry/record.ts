import { z } from 'zod';
import { commandFields } from '../asked.ts';
import { carsCarrying, raiseEntry } from '../command/raise-entry.ts';
import { runCommand } from '../command/run-command.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { answerFields, entryForGarage } from './entry-for-garage.ts';
import { writeEntry } from './write-entry.ts';

export const recordEntryInput = z.strictObject({
  ...commandFields,
  entry: entryForGarage,
  ...answerFields,
});

/** Records something that happened. The id is the client's, so sending it again cannot double it. */
export function recordEntry(
  world: World,
  asker: Asker,
  input: z.output<typeof recordEntryInput>,
): Promise<Written> {
  return runCommand(world, asker, 'entry.record', input, async (writing) => {
    const { entry } = input;
    const before = await carsCarrying(writing, [entry]);
    await writeEntry(writing, entry, input);
    const carried = [...before, ...(await carsCarrying(writing, [entry]))];
    const version = await raiseEntry(writing, entry.car ?? null, carried);
    return { id: entry.id, revision: 1, version };
  });
}
