import { type ItemOwner, insertItem, readCar, readGear } from '@quartermark/db';
import { itemInput } from '@quartermark/engine/log';
import { z } from 'zod';
import { commandFields, id } from '../asked.ts';
import { raiseOf } from '../command/raise-of.ts';
import { runCommand, type Writing } from '../command/run-command.ts';
import { badField, notFoundHere, refuse } from '../refused.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { checkItem } from './check-item.ts';

/** Whose item it is: a car's, or that of a component, a piece of equipment or a person. */
export const ownerFields = { carId: id.optional(), gearId: id.optional() } as const;

export const addItemInput = z.strictObject({
  ...commandFields,
  ...ownerFields,
  itemId: id,
  item: itemInput,
});

type AddItem = z.output<typeof addItemInput>;

/** Adds a service item with its limits to a car, a component, a piece of equipment or a person. */
export function addItem(world: World, asker: Asker, input: AddItem): Promise<Written> {
  return runCommand(world, asker, 'item.add', input, async (writing) => {
    const owner = await ownerOf(writing, input);
    await writeItem(writing, owner, input);
    return { id: input.itemId, revision: 1, version: await raiseOwner(writing, owner) };
  });
}

/** @throws Refused `badInput` unless exactly one owner is named, `notFound` if it is not here */
export async function ownerOf(
  { tx, garage }: Writing,
  { carId, gearId }: { carId?: string | undefined; gearId?: string | undefined },
): Promise<ItemOwner> {
  if (carId !== undefined && gearId === undefined) {
    if (!(await readCar(tx, garage.id, carId))) throw notFoundHere('car', 'carId');
    return { carId };
  }
  if (gearId !== undefined && carId === undefined) {
    const piece = await readGear(tx, garage.id, gearId);
    if (!piece || piece.removedAt) throw notFoundHere('set, tool or person', 'gearId');
    return { gearId };
  }
  throw badField('carId', 'carId: an item has one owner; name a car, or a set, tool or person');
}

/** @returns the car's version; 0 where a car does not own it */
export function raiseOwner(writing: Writing, owner: ItemOwner): Promise<number> {
  return raiseOf(writing, { carId: null, gearId: null, ...owner });
}

/** The writing part, without raising anything. */
export async function writeItem(
  writing: Writing,
  owner: ItemOwner,
  { itemId, item }: Pick<AddItem, 'itemId' | 'item'>,
): Promise<void> {
  const { tx, garage, now, by } = writing;
  checkItem(writing, item);
  const row = { garageId: garage.id, id: itemId, owner, body: item, at: now, by };
  if (!(await insertItem(tx, row)))
    throw refuse('idInUse', 'itemId', 'An item with this id exists already; open it where it is.');
}
