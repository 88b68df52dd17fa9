import { changeItem as changeRow } from '@quartermark/db';
import { itemInput } from '@quartermark/engine/log';
import { z } from 'zod';
import { baseRevision, commandFields, id } from '../asked.ts';
import { raiseOf } from '../command/raise-of.ts';
import { runCommand } from '../command/run-command.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { checkItem } from './check-item.ts';

import { standingItem } from './standing-item.ts';

export const changeItemInput = z.strictObject({
  ...commandFields,
  itemId: id,
  baseRevision,
  item: itemInput,
});

/** Changes an item's name, limits or when it was last known to be good. */
export function changeItem(
  world: World,
  asker: Asker,
  input: z.output<typeof changeItemInput>,
): Promise<Written> {
  return runCommand(world, asker, 'item.change', input, async (writing) => {
    const { tx, garage, now, by } = writing;
    const { itemId, item, baseRevision } = input;
    await standingItem(writing, itemId, baseRevision);
    checkItem(writing, item);
    const change = { garageId: garage.id, id: itemId, baseRevision, at: now, by };
    const row = await changeRow(tx, { ...change, body: item });
    if (!row) throw new Error(`could not change item ${itemId}: it changed in a locked garage`);
    return { id: itemId, revision: row.revision, version: await raiseOf(writing, row) };
  });
}
