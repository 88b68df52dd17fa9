import { type EntryRow, namesOf, type Tx } from '@quartermark/db';
import type { EntryView } from '../views.ts';
import { bodyOf } from './body-of.ts';

/** Entries as screens show them, each with the name of who recorded it. */
export async function entryViewsOf(
  tx: Tx,
  garageId: string,
  rows: readonly EntryRow[],
): Promise<EntryView[]> {
  const names = await namesOf(
    tx,
    garageId,
    rows.map((row) => row.recordedBy),
  );
  return rows.map((row) => ({
    entry: bodyOf(row),
    revision: row.revision,
    removed: row.removedAt !== null,
    recorded: row.recorded,
    recordedAt: row.recordedAt.toISOString(),
    recordedBy: names.get(row.recordedBy) ?? 'somebody who has left',
  }));
}
