import { type FitWindow, fitWindows } from '@quartermark/engine/gear';
import { type Entry, entryInput } from '@quartermark/engine/log';
import type { EntryRow } from '../entries/read.ts';

/** Entries as the engine reads them, and the ids of those that a later schema finds fault with. */
export type ReadEntries = { entries: Entry[]; unreadable: string[] };

export function entriesOf(rows: readonly EntryRow[]): ReadEntries {
  const read: ReadEntries = { entries: [], unreadable: [] };
  for (const { id, body, recorded, revision, removedAt } of rows) {
    const parsed = entryInput.safeParse(body);
    if (parsed.success)
      read.entries.push({ ...parsed.data, recorded, revision, removed: removedAt !== null });
    else read.unreadable.push(id);
  }
  return read;
}

/** Where a component was from when to when, by the entries about it that can be read. */
export function windowsOf(rows: readonly EntryRow[]): FitWindow[] {
  return fitWindows(entriesOf(rows).entries);
}

/** Where it is at the end of a day; null: on no car. */
export function fittedOn(rows: readonly EntryRow[], day: string): FitWindow | null {
  const windows = windowsOf(rows.filter(({ on }) => on <= day));
  return windows.find(({ end }) => end === null) ?? null;
}
