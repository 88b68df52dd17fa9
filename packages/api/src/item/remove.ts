import { z } from 'zod';
import { baseRevision, commandFields, id } from '../asked.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const removeItemInput = z.strictObject({ ...commandFields, itemId: id, baseRevision });

export async function removeItem(
  _world: World,
  _asker: Asker,
  _input: z.output<typeof removeItemInput>,
): Promise<Written> {
  throw new Error('removeItem: under construction');
}
