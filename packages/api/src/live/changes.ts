import { z } from 'zod';
import { id } from '../asked.ts';
import type { Context } from '../context.ts';
import type { LiveEvent } from '../views.ts';

export const liveChangesInput = z.strictObject({ garageId: id });

export async function* liveChanges(
  _ctx: Context,
  _input: z.output<typeof liveChangesInput>,
  _signal: AbortSignal,
): AsyncGenerator<LiveEvent, void> {
  yield { kind: 'resync' };
}
