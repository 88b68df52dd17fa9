import { randomUUID } from 'node:crypto';
import { initTRPC, TRPCError } from '@trpc/server';
import superjson from 'superjson';
import type { Context } from './context.ts';
import type { Refusal } from './refusal.ts';
import { Refused, refuse } from './refused.ts';
import { trpcCode } from './trpc-code.ts';
import type { Log } from './world.ts';

/** The refusal that an error carries, or null if it is none. */
export function refusalOf(error: unknown): Refusal | null {
  if (error instanceof Refused) return error.refusal;
  if (error instanceof TRPCError && error.cause instanceof Refused) return error.cause.refusal;
  return null;
}

/**
 * Any error as the door shows it: a refusal under its code, everything else as "the world failed" with a
 * reference under which the log holds the cause.
 */
export function atTheDoor(error: unknown, log: Log, path: string): TRPCError {
  const refusal = refusalOf(error);
  if (refusal)
    return new TRPCError({
      code: trpcCode(refusal.code),
      message: refusal.message,
      cause: new Refused(refusal),
    });
  if (error instanceof TRPCError && error.code !== 'INTERNAL_SERVER_ERROR') return error;
  const reference = randomUUID().slice(0, 8);
  log.error({ err: error, path, reference }, 'a request failed');
  return new TRPCError({
    code: 'INTERNAL_SERVER_ERROR',
    message: `Nothing was saved: the server could not do its part. Try again; if it stays so, look in its log for ${reference}.`,
  });
}

const t = initTRPC.context<Context>().create({
  transformer: superjson,
  sse: {
    ping: { enabled: true, intervalMs: 2000 },
    client: { reconnectAfterInactivityMs: 5000 },
  },
  errorFormatter({ shape, error }) {
    // a stack says where the code lies on the disk of the server; a browser has no use for it
    const { stack: _stack, ...data } = shape.data;
    return { ...shape, data: { ...data, refusal: refusalOf(error) } };
  },
});

export const router = t.router;
export const createCallerFactory = t.createCallerFactory;

/** Anyone may ask. */
export const openProcedure = t.procedure.use(async ({ ctx, next, path }) => {
  const result = await next();
  if (!result.ok) throw atTheDoor(result.error.cause ?? result.error, ctx.world.log, path);
  return result;
});

/** Only a signed-in person may ask. */
export const procedure = openProcedure.use(async ({ ctx, next }) => {
  const asker = await ctx.whoAsks();
  if (!asker) throw refuse('signedOut', null, 'You are signed out; sign in and send it again.');
  return next({ ctx: { asker } });
});
