import { randomUUID } from 'node:crypto';
import { TRPCError } from '@trpc/server';
import type { Refusal } from './refusal.ts';
import { Refused } from './refused.ts';
import { trpcCode } from './trpc-code.ts';
import type { Log } from './world.ts';

/** The refusal that an error carries, or null if it is none. */
export function refusalOf(error: unknown): Refusal | null {
  if (!(error instanceof Error)) return null;
  return refusalIn(error) ?? refusalIn(error.cause);
}

/** By name, not by class: a page and a route are bundled apart, so each has a class `Refused` of its own. */
function refusalIn(thrown: unknown): Refusal | null {
  return thrown instanceof Error && thrown.name === 'Refused' ? (thrown as Refused).refusal : null;
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
  const cause = error instanceof TRPCError ? (error.cause ?? error) : error;
  log.error({ err: cause, path, reference }, 'a request failed');
  return new TRPCError({
    code: 'INTERNAL_SERVER_ERROR',
    message: `Nothing was saved: the server could not do its part. Try again; if it stays so, look in its log for ${reference}.`,
  });
}
