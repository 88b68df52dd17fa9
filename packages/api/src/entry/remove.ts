import { removeEntry as removeRow } from '@quartermark/db';
import { z } from 'zod';
import { baseRevision, commandFields, id } from '../asked.ts';
import { carsCarrying, raiseEntry } from '../command/raise-entry.ts';
import { runCommand, type Writing } from '../command/run-command.ts';
import { rebuildLayUps } from '../lay-up/rebuild.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { bodyOf } from './body-of.ts';
import { standingEntry } from './standing-entry.ts';

export const removeEntryInput = z.strictObject({ ...commandFields, entryId: id, baseRevision });

type RemoveInput = z.output<typeof removeEntryInput>;

/** Takes an entry out of the count and leaves a tombstone: it is never revived, and never forgotten. */
export function removeEntry(world: World, asker: Asker, input: RemoveInput): Promise<Written> {
  return runCommand(world, asker, 'entry.remove', input, async (writing) => {
    const { revision, carId, carried } = await buryEntry(writing, input);
    const version = await raiseEntry(writing, carId, carried);
    return { id: input.entryId, revision, version };
  });
}

/** The writing part, without raising anything. @returns the cars that carry, or did, what it is about */
export async function buryEntry(
  writing: Writing,
  { entryId, baseRevision }: Pick<RemoveInput, 'entryId' | 'baseRevision'>,
): Promise<{ revision: number; carId: string | null; carried: string[] }> {
  const { tx, garage, now, by, commandId } = writing;
  const before = await standingEntry(writing, entryId, baseRevision);
  const change = { garageId: garage.id, id: entryId, baseRevision, at: now, by, commandId };
  const entries = [bodyOf(before)];
  const carriedBefore = await carsCarrying(writing, entries);
  const row = await removeRow(tx, change);
  if (!row)
    throw new Error(`could not remove entry ${entryId}: it changed though its garage is locked`);
  await rebuildLayUps(writing, bodyOf(before));
  const carried = [...carriedBefore, ...(await carsCarrying(writing, entries))];
  return { revision: row.revision, carId: row.carId, carried };
}
