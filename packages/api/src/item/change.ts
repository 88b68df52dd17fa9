import { itemInput } from '@quartermark/engine/log';
import { z } from 'zod';
import { baseRevision, commandFields, id } from '../asked.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const changeItemInput = z.strictObject({
  ...commandFields,
  itemId: id,
  baseRevision,
  item: itemInput,
});

export async function changeItem(
  _world: World,
  _asker: Asker,
  _input: z.output<typeof changeItemInput>,
): Promise<Written> {
  throw new Error('changeItem: under construction');
}
