import { z } from 'zod';
import { baseRevision, commandFields, id } from '../asked.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const removeEntryInput = z.strictObject({ ...commandFields, entryId: id, baseRevision });

export async function removeEntry(
  _world: World,
  _asker: Asker,
  _input: z.output<typeof removeEntryInput>,
): Promise<Written> {
  throw new Error('removeEntry: under construction');
}
