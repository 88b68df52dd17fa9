import { insertItem, readCar } from '@quartermark/db';
import { itemInput } from '@quartermark/engine/log';
import { z } from 'zod';
import { commandFields, id } from '../asked.ts';
import { raise } from '../command/raise.ts';
import { runCommand, type Writing } from '../command/run-command.ts';
import { notFoundHere, refuse } from '../refused.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { checkItem } from './check-item.ts';

export const addItemInput = z.strictObject({
  ...commandFields,
  carId: id,
  itemId: id,
  item: itemInput,
});

type AddItem = z.output<typeof addItemInput>;

/** Adds a service item with its limits to a car. */
export function addItem(world: World, asker: Asker, input: AddItem): Promise<Written> {
  return runCommand(world, asker, 'item.add', input, async (writing) => {
    const { carId } = input;
    if (!(await readCar(writing.tx, writing.garage.id, carId))) throw notFoundHere('car', 'carId');
    await writeItem(writing, input);
    return { id: input.itemId, revision: 1, version: await raise(writing, carId) };
  });
}

/** The writing part, without raising the car's version. */
export async function writeItem(
  writing: Writing,
  { carId, itemId, item }: Pick<AddItem, 'carId' | 'itemId' | 'item'>,
): Promise<void> {
  const { tx, garage, now, by } = writing;
  checkItem(writing, item);
  const row = { garageId: garage.id, id: itemId, owner: { carId }, body: item, at: now, by };
  if (!(await insertItem(tx, row)))
    throw refuse('idInUse', 'itemId', 'An item with this id exists already; open it on its car.');
}
