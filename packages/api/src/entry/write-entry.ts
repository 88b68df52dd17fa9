import { insertEntry, nextRecorded, readEntry } from '@quartermark/db';
import type { EntryInput } from '@quartermark/engine/log';
import type { Writing } from '../command/run-command.ts';
import { rebuildLayUps } from '../lay-up/rebuild.ts';
import { refuse } from '../refused.ts';
import { checkEntry } from './check-entry.ts';
import type { Answers } from './entry-for-garage.ts';

/** Checks and writes a new entry with its first revision; the countdowns are the caller's to raise. */
export async function writeEntry(
  writing: Writing,
  entry: EntryInput,
  answers: Answers,
): Promise<void> {
  const { tx, garage, now, by, commandId } = writing;
  const there = await readEntry(tx, garage.id, entry.id);
  if (there) throw there.removedAt ? staysRemoved() : inUse();
  await checkEntry(writing, entry, answers);
  const recorded = await nextRecorded(tx, garage.id);
  const row = { garageId: garage.id, body: entry, recorded, at: now, by, commandId };
  if (!(await insertEntry(tx, row))) throw inUse();
  await rebuildLayUps(writing, entry);
}

const staysRemoved = () =>
  refuse(
    'removed',
    'entry.id',
    'This entry was recorded before and then removed; it stays removed. Record it as a new one.',
  );

const inUse = () =>
  refuse(
    'idInUse',
    'entry.id',
    'An entry with this id is in the log already; reload the history before recording it again.',
  );
