import { insertGear, tellGarage } from '@quartermark/db';
import { gearInput, itemInput } from '@quartermark/engine/log';
import { z } from 'zod';
import { commandFields, id } from '../asked.ts';
import { runCommand, type Writing } from '../command/run-command.ts';
import { writeItem } from '../item/add.ts';
import { refuse } from '../refused.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const addGearInput = z.strictObject({
  ...commandFields,
  gearId: id,
  gear: gearInput,
  /** what is watched of it from the start */
  items: z
    .array(z.strictObject({ itemId: id, item: itemInput }))
    .max(40)
    .default([]),
});

type AddGear = z.output<typeof addGearInput>;

/** Adds a component, a piece of equipment or a person, with its items. */
export function addGear(world: World, asker: Asker, input: AddGear): Promise<Written> {
  return runCommand(world, asker, 'gear.add', input, async (writing) => {
    await writeGear(writing, input);
    await tellGarage(writing.tx, writing.garage.id);
    return { id: input.gearId, revision: 1, version: 0 };
  });
}

/** The writing part, without telling anybody. */
export async function writeGear(
  writing: Writing,
  { gearId, gear, items }: Pick<AddGear, 'gearId' | 'gear' | 'items'>,
): Promise<void> {
  const { tx, garage, now, by } = writing;
  if (!(await insertGear(tx, { garageId: garage.id, id: gearId, body: gear, at: now, by })))
    throw refuse('idInUse', 'gearId', 'This is in the garage already; open it there.');
  for (const { itemId, item } of items) await writeItem(writing, { gearId }, { itemId, item });
}
