import { insertEntry, nextRecorded, readEntry } from '@quartermark/db';
import type { EntryInput } from '@quartermark/engine/log';
import type { Writing } from '../command/run-command.ts';
import { rebuildLayUps } from '../lay-up/rebuild.ts';
import { type Refused, refuse } from '../refused.ts';
import { checkEntry } from './check-entry.ts';
import type { Answers } from './entry-for-garage.ts';

/** Checks and writes a new entry with its first revision; the countdowns are the caller's to raise. */
export async function writeEntry(
  writing: Writing,
  entry: EntryInput,
  answers: Answers,
): Promise<void> {
  const { tx, garage, now, by, commandId } = writing;
  await checkEntry(writing, entry, answers);
  const recorded = await nextRecorded(tx, garage.id);
  const row = { garageId: garage.id, body: entry, recorded, at: now, by, commandId };
  if (!(await insertEntry(tx, row))) throw await inUse(writing, entry.id);
  await rebuildLayUps(writing, entry);
}

/** The id is taken: by an entry of the log, or by one that was removed and is never revived. */
async function inUse({ tx, garage }: Writing, entryId: string): Promise<Refused> {
  const there = await readEntry(tx, garage.id, entryId);
  return there?.removedAt
    ? refuse(
        'removed',
        'entry.id',
        'This entry was recorded before and then removed; it stays removed. Record it as a new one.',
      )
    : refuse(
        'idInUse',
        'entry.id',
        'An entry with this id is in the log already; reload the history before recording it again.',
      );
}
