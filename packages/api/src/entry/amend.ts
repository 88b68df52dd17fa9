import { amendEntry as amendRow } from '@quartermark/db';
import { z } from 'zod';
import { baseRevision, commandFields, id } from '../asked.ts';
import { carsCarrying, raiseEntry } from '../command/raise-entry.ts';
import { runCommand, type Writing } from '../command/run-command.ts';
import { rebuildLayUps } from '../lay-up/rebuild.ts';
import { badField } from '../refused.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { bodyOf } from './body-of.ts';
import { checkEntry } from './check-entry.ts';
import { answerFields, entryForGarage } from './entry-for-garage.ts';
import { standingEntry } from './standing-entry.ts';

export const amendEntryInput = z.strictObject({
  ...commandFields,
  entryId: id,
  baseRevision,
  entry: entryForGarage,
  ...answerFields,
});

type AmendInput = z.output<typeof amendEntryInput>;

/** Puts an entry right. What it said before stays in its revisions, with who changed it. */
export function amendEntry(world: World, asker: Asker, input: AmendInput): Promise<Written> {
  return runCommand(world, asker, 'entry.amend', input, async (writing) => {
    const { revision, carried } = await rewriteEntry(writing, input);
    const version = await raiseEntry(writing, input.entry.car ?? null, carried);
    return { id: input.entryId, revision, version };
  });
}

/** The writing part, without raising anything. @returns the cars that carry, or did, what it is about */
export async function rewriteEntry(
  writing: Writing,
  input: Omit<AmendInput, 'garageId' | 'commandId'>,
): Promise<{ revision: number; carried: string[] }> {
  const { tx, garage, now, by, commandId } = writing;
  const { entry, entryId, baseRevision } = input;
  const before = bodyOf(await standingEntry(writing, entryId, baseRevision));
  keeps(entry.id === entryId, 'id');
  keeps(entry.kind === before.kind, 'kind');
  keeps(entry.car === before.car, 'car');
  await checkEntry(writing, entry, input, before);
  const carriedBefore = await carsCarrying(writing, [before, entry]);
  const change = { garageId: garage.id, id: entryId, baseRevision, at: now, by, commandId };
  const row = await amendRow(tx, { ...change, body: entry });
  if (!row)
    throw new Error(`could not amend entry ${entryId}: it changed though its garage is locked`);
  await rebuildLayUps(writing, entry);
  const carried = [...carriedBefore, ...(await carsCarrying(writing, [before, entry]))];
  return { revision: row.revision, carried };
}

function keeps(kept: boolean, what: string): void {
  if (kept) return;
  throw badField(
    `entry.${what}`,
    `${what}: an amended entry keeps its ${what}; record a new entry and remove this one`,
  );
}
