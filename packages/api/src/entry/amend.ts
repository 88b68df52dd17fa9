import { entryInput } from '@quartermark/engine/log';
import { z } from 'zod';
import { baseRevision, commandFields, id } from '../asked.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { confirmed } from './record.ts';

export const amendEntryInput = z.strictObject({
  ...commandFields,
  entryId: id,
  baseRevision,
  entry: entryInput,
  confirmed: confirmed.default([]),
  queued: z.boolean().default(false),
});

export async function amendEntry(
  _world: World,
  _asker: Asker,
  _input: z.output<typeof amendEntryInput>,
): Promise<Written> {
  throw new Error('amendEntry: under construction');
}
