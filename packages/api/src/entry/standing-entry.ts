import { type EntryRow, namesOf, newestRevision, readEntry } from '@quartermark/db';
import type { Writing } from '../command/run-command.ts';
import { notFoundHere, refuse } from '../refused.ts';

/**
 * The entry as it stands, if it may be changed from `baseRevision`.
 *
 * @throws Refused `notFound`, `removed`, or `conflict` with the newest body beside it
 */
export async function standingEntry(
  writing: Writing,
  entryId: string,
  baseRevision: number,
): Promise<EntryRow> {
  const row = await readEntry(writing.tx, writing.garage.id, entryId);
  if (!row) throw notFoundHere('entry', 'entryId');
  if (row.removedAt)
    throw refuse(
      'removed',
      'entryId',
      'This entry was removed and stays so; what you wrote is still in the form. Record it as a new entry.',
    );
  if (row.revision !== baseRevision) throw await conflict(writing, row, baseRevision);
  return row;
}

async function conflict({ tx, garage }: Writing, row: EntryRow, baseRevision: number) {
  const newest = await newestRevision(tx, garage.id, row.id);
  if (!newest) throw new Error(`could not find the revisions of entry ${row.id}: it has none`);
  const names = await namesOf(tx, garage.id, [newest.by]);
  return refuse(
    'conflict',
    'baseRevision',
    `This entry was changed since you opened it (revision ${row.revision}, you had ${baseRevision}). Both are shown; keep one, or write the two together.`,
    {
      conflict: {
        revision: row.revision,
        body: row.body,
        by: names.get(newest.by) ?? newest.by,
        at: newest.at.toISOString(),
      },
    },
  );
}
