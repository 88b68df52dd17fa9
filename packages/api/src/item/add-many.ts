import { itemInput } from '@quartermark/engine/log';
import { z } from 'zod';
import { commandFields, id } from '../asked.ts';
import { runCommand } from '../command/run-command.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { ownerFields, ownerOf, raiseOwner, writeItem } from './add.ts';

export const addManyItemsInput = z.strictObject({
  ...commandFields,
  ...ownerFields,
  items: z
    .array(z.strictObject({ itemId: id, item: itemInput }))
    .min(1, 'items: choose at least one')
    .max(80),
});

type AddMany = z.output<typeof addManyItemsInput>;

/** Adds several items at once, all or none: the starting list of a car. */
export function addManyItems(world: World, asker: Asker, input: AddMany): Promise<Written> {
  return runCommand(world, asker, 'item.addMany', input, async (writing) => {
    const owner = await ownerOf(writing, input);
    for (const each of input.items) await writeItem(writing, owner, each);
    const id = 'carId' in owner ? owner.carId : owner.gearId;
    return { id, revision: 1, version: await raiseOwner(writing, owner) };
  });
}
