import { removeItem as removeRow } from '@quartermark/db';
import { z } from 'zod';
import { baseRevision, commandFields, id } from '../asked.ts';
import { raiseOf } from '../command/raise-of.ts';
import { runCommand } from '../command/run-command.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';

import { standingItem } from './standing-item.ts';

export const removeItemInput = z.strictObject({ ...commandFields, itemId: id, baseRevision });

/** Takes an item off a car's list. Entries that did it keep saying so. */
export function removeItem(
  world: World,
  asker: Asker,
  input: z.output<typeof removeItemInput>,
): Promise<Written> {
  return runCommand(world, asker, 'item.remove', input, async (writing) => {
    const { tx, garage, now, by } = writing;
    const { itemId, baseRevision } = input;
    await standingItem(writing, itemId, baseRevision);
    const row = await removeRow(tx, { garageId: garage.id, id: itemId, baseRevision, at: now, by });
    if (!row) throw new Error(`could not remove item ${itemId}: it changed in a locked garage`);
    return { id: itemId, revision: row.revision, version: await raiseOf(writing, row) };
  });
}
