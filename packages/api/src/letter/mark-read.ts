import { setRead } from '@quartermark/db';
import { z } from 'zod';
import { commandFields, id } from '../asked.ts';
import { runCommand } from '../command/run-command.ts';
import { notFoundHere } from '../refused.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const markReadInput = z.strictObject({ ...commandFields, letterId: id, read: z.boolean() });

/** Marks a letter of the asker's own as read, or as not read. */
export function markRead(
  world: World,
  asker: Asker,
  input: z.output<typeof markReadInput>,
): Promise<Written> {
  const { garageId, letterId, read } = input;
  return runCommand(world, asker, 'letter.markRead', input, async ({ tx, now, by }) => {
    const whose = { garageId, userId: by };
    if (!(await setRead(tx, whose, letterId, read ? now : null)))
      throw notFoundHere('letter', 'letterId');
    return { id: letterId, revision: 0, version: 0 };
  });
}
