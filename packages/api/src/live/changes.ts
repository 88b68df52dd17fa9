import { TRPCError } from '@trpc/server';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import type { Context } from '../context.ts';
import { signedOut } from '../refused.ts';
import { atTheDoor } from '../trpc-error.ts';
import type { LiveEvent } from '../views.ts';
import { HubClosed } from './hub.ts';

export const liveChangesInput = z.strictObject({ garageId: id });

/**
 * Tells when a car of a garage was counted anew. Session and membership are asked for again on each
 * delivery, because a subscription may outlive both.
 */
export async function* liveChanges(
  ctx: Context,
  { garageId }: z.output<typeof liveChangesInput>,
  signal: AbortSignal,
): AsyncGenerator<LiveEvent, void> {
  // before anything is awaited: what changes from here on is not missed
  const { events, leave } = ctx.hub.subscribe(garageId, signal);
  try {
    await mayLook(ctx, garageId);
    // the first answer tells the client that it is connected: fetch now, the rest follows
    yield { kind: 'resync' };
    for await (const event of events) {
      await mayLook(ctx, garageId);
      yield event;
    }
  } catch (error) {
    // a code with which the client comes back by itself
    if (error instanceof HubClosed)
      throw new TRPCError({ code: 'SERVICE_UNAVAILABLE', message: 'The server is stopping.' });
    throw atTheDoor(error, ctx.world.log, 'live.changes');
  } finally {
    leave();
  }
}

async function mayLook(ctx: Context, garageId: string): Promise<void> {
  const asker = await ctx.whoAsksNow();
  if (!asker) throw signedOut();
  await inGarage(ctx.world, asker, garageId, async () => {});
}
