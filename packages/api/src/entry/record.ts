import { entryInput } from '@quartermark/engine/log';
import { z } from 'zod';
import { commandFields } from '../asked.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';

/** Questions that a person has answered with "yes, as I wrote it". */
export const confirmed = z.array(z.enum(['odometerBackwards', 'orderUnclear'])).max(2);

export const recordEntryInput = z.strictObject({
  ...commandFields,
  entry: entryInput,
  confirmed: confirmed.default([]),
  /** true: it waited on a device without signal, so nobody is there to be asked */
  queued: z.boolean().default(false),
});

export async function recordEntry(
  _world: World,
  _asker: Asker,
  _input: z.output<typeof recordEntryInput>,
): Promise<Written> {
  throw new Error('recordEntry: under construction');
}
