import { initTRPC } from '@trpc/server';
import superjson from 'superjson';
import type { Context } from './context.ts';
import { signedOut } from './refused.ts';
import { atTheDoor, refusalOf } from './trpc-error.ts';

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
  if (!result.ok) throw atTheDoor(result.error, ctx.world.log, path);
  return result;
});

/** Only a signed-in person may ask. */
export const procedure = openProcedure.use(async ({ ctx, next }) => {
  const asker = await ctx.whoAsks();
  if (!asker) throw signedOut();
  return next({ ctx: { asker } });
});
