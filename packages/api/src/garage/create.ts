import { createHash } from 'node:crypto';
import { insertCommand } from '@quartermark/db';
import { z } from 'zod';
import { commandFields } from '../asked.ts';
import { payloadHash } from '../command/payload-hash.ts';
import { runCommand } from '../command/run-command.ts';
import { Refused, refuse } from '../refused.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { garageFields } from './fields.ts';
import { foundGarage } from './found.ts';

export const createGarageInput = z.strictObject({ ...commandFields, ...garageFields });

type CreateInput = z.output<typeof createGarageInput>;

const VERB = 'garage.create';

/**
 * A further garage for somebody who has an account. The result's `id` is the garage's: it is derived
 * from the sender and the id that was sent, so that no id of a stranger can be met, blocked or found out.
 */
export async function createGarage(
  world: World,
  asker: Asker,
  input: CreateInput,
): Promise<Written> {
  if (asker.demo)
    throw refuse('notAllowed', null, 'The demo has one garage; make an account for your own.');
  const own = { ...input, garageId: garageIdOf(asker.userId, input.garageId) };
  const done = await answerIfDone(world, asker, own);
  if (done) return done;
  try {
    return await create(world, asker, own);
  } catch (error) {
    // sent twice at once: the other copy was faster
    const other = await answerIfDone(world, asker, own);
    if (other) return other;
    throw error;
  }
}

/** A UUID of version 8 (RFC 9562, 5.8) made from who asks and what they call the garage. */
function garageIdOf(userId: string, sentId: string): string {
  const hex = createHash('sha256').update(`garage ${userId} ${sentId}`).digest('hex');
  const variant = ((Number.parseInt(hex.charAt(16), 16) & 0x3) | 0x8).toString(16);
  return [
    hex.slice(0, 8),
    hex.slice(8, 12),
    `8${hex.slice(13, 16)}`,
    `${variant}${hex.slice(17, 20)}`,
    hex.slice(20, 32),
  ].join('-');
}

/** The stored answer, if this garage was made before; null if it does not exist. */
async function answerIfDone(
  world: World,
  asker: Asker,
  input: CreateInput,
): Promise<Written | null> {
  try {
    return await runCommand(world, asker, VERB, input, async () => {
      throw refuse('idInUse', 'garageId', 'This garage exists already; open it from your list.');
    });
  } catch (error) {
    if (error instanceof Refused && error.refusal.code === 'notFound') return null;
    throw error;
  }
}

function create(world: World, asker: Asker, input: CreateInput): Promise<Written> {
  const { garageId, commandId, ...fields } = input;
  const now = world.clock.now();
  const by = asker.userId;
  const result: Written = { id: garageId, revision: 1, version: 0 };
  return world.db.orm.transaction(async (tx) => {
    const founder = { userId: by, role: 'owner', demo: false, now };
    if (!(await foundGarage(tx, garageId, fields, founder)))
      throw new Error(`could not make garage ${garageId}: its id is taken`);
    const hash = payloadHash(VERB, input);
    await insertCommand(tx, {
      garageId,
      commandId,
      verb: VERB,
      payloadHash: hash,
      result,
      at: now,
      by,
    });
    return result;
  });
}
