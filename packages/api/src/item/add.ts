import { itemInput } from '@quartermark/engine/log';
import { z } from 'zod';
import { commandFields, id } from '../asked.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const addItemInput = z.strictObject({
  ...commandFields,
  carId: id,
  itemId: id,
  item: itemInput,
});

export async function addItem(
  _world: World,
  _asker: Asker,
  _input: z.output<typeof addItemInput>,
): Promise<Written> {
  throw new Error('addItem: under construction');
}
