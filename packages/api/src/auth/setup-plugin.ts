import { findSetup } from '@quartermark/db';
import type { BetterAuthPlugin } from 'better-auth';
import { APIError, createAuthEndpoint } from 'better-auth/api';
import { setSessionCookie } from 'better-auth/cookies';
import { z } from 'zod';
import { parse } from '../asked.ts';
import { openDemo, openDemoInput } from '../demo/open.ts';
import { Refused } from '../refused.ts';
import { setupOwner, setupOwnerInput } from '../setup/owner.ts';
import { checkToken } from '../setup/token.ts';
import type { World } from '../world.ts';

type EndpointContext = Parameters<typeof setSessionCookie>[0];

const STATUS = { badInput: 'BAD_REQUEST', setupToken: 'FORBIDDEN' } as const;

/** A refusal travels here as it does through tRPC: as member `refusal` of the answer. */
function asApiError(error: unknown): unknown {
  if (!(error instanceof Refused)) return error;
  const { refusal } = error;
  const status = refusal.code === 'setupToken' ? STATUS.setupToken : STATUS.badInput;
  return new APIError(status, { message: refusal.message, code: refusal.code, refusal });
}

async function refusing<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    throw asApiError(error);
  }
}

async function signIn(ctx: EndpointContext, userId: string, forgetOnClose: boolean): Promise<void> {
  const user = await ctx.context.internalAdapter.findUserById(userId);
  const session = await ctx.context.internalAdapter.createSession(userId, forgetOnClose);
  if (!user || !session) throw new Error(`could not open a session for user ${userId}: it is gone`);
  await setSessionCookie(ctx, { session, user }, forgetOnClose);
}

/** The two ways in before anybody has an account, both with the setup token that the launcher prints. */
export function setupPlugin(world: World) {
  const anyBody = z.unknown();
  return {
    id: 'setup',
    endpoints: {
      setupOwner: createAuthEndpoint(
        '/setup/owner',
        { method: 'POST', body: anyBody },
        async (ctx) => {
          const made = await refusing(async () => {
            const input = parse(setupOwnerInput, ctx.body);
            // asked twice: hashing costs a tenth of a second, which only a holder of the token may spend
            checkToken(input.token, await findSetup(world.db.orm));
            return setupOwner(world, input, await ctx.context.password.hash(input.password));
          });
          await signIn(ctx, made.userId, false);
          return ctx.json({ garageId: made.garageId });
        },
      ),
      setupDemo: createAuthEndpoint(
        '/setup/demo',
        { method: 'POST', body: anyBody },
        async (ctx) => {
          const opened = await refusing(() => openDemo(world, parse(openDemoInput, ctx.body)));
          await signIn(ctx, opened.userId, true);
          return ctx.json({ garageId: opened.garageId });
        },
      ),
    },
  } satisfies BetterAuthPlugin;
}
