import { z } from 'zod';
import { id } from '../asked.ts';
import type { EntryView } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const entryOneInput = z.strictObject({ garageId: id, entryId: id });

export async function entryOne(
  _world: World,
  _asker: Asker,
  _input: z.output<typeof entryOneInput>,
): Promise<EntryView> {
  throw new Error('entryOne: under construction');
}
