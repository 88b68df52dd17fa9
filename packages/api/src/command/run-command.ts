import {
  findCommand,
  type GarageRole,
  type GarageRow,
  insertCommand,
  lockGarage,
  type Tx,
} from '@quartermark/db';
import { refuse } from '../refused.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { inGarage } from './in-garage.ts';
import { payloadHash } from './payload-hash.ts';

export type CommandInput = { garageId: string; commandId: string } & Record<string, unknown>;

/** What a verb writes with, inside its one transaction. */
export type Writing = {
  tx: Tx;
  /** the garage's row, locked: writes of one garage follow one another */
  garage: GarageRow;
  now: Date;
  by: string;
  /** of whoever asks, in this garage */
  role: GarageRole;
  commandId: string;
};

/**
 * Does what a command asks for, once.
 *
 * The garage's row is locked first, so two copies of one command meet here one after the other: the first
 * does the work and leaves its result beside it, in the same transaction; the second finds the result and
 * gets it again. The same id with another payload is refused. A refused command leaves nothing behind, so
 * its id can be used again with what was missing.
 */
export async function runCommand(
  world: World,
  asker: Asker,
  verb: string,
  input: CommandInput,
  work: (writing: Writing) => Promise<Written>,
): Promise<Written> {
  const { garageId, commandId } = input;
  const hash = payloadHash(verb, input);
  const written = await inGarage(world, asker, garageId, async (tx, role) => {
    const garage = await lockGarage(tx, garageId);
    const done = await findCommand(tx, garageId, commandId);
    if (done) return resultOf(done, hash);
    const now = world.clock.now();
    const by = asker.userId;
    const result = await work({ tx, garage, now, by, role, commandId });
    await insertCommand(tx, { garageId, commandId, verb, payloadHash: hash, result, at: now, by });
    return result;
  });
  await world.reached('afterCommit');
  return written;
}

function resultOf(done: { payloadHash: string; result: unknown }, hash: string): Written {
  // written by this very function, so its shape is known
  if (done.payloadHash === hash) return done.result as Written;
  throw refuse(
    'commandReused',
    'commandId',
    'This command id was used before for something else, and that was saved; reload the page and send the new one again.',
  );
}
