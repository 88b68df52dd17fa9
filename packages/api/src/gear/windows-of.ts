import type { EntryRow } from '@quartermark/db';
import { type FitWindow, fitWindows } from '@quartermark/engine/gear';
import { type Entry, entryInput } from '@quartermark/engine/log';

/** Stored entries as the engine reads them. */
export function entriesOf(rows: readonly EntryRow[]): Entry[] {
  return rows.map(({ body, recorded, revision, removedAt }) => ({
    ...entryInput.parse(body),
    recorded,
    revision,
    removed: removedAt !== null,
  }));
}

/** Where a component was from when to when, by the entries about it that lie before a day is over. */
export function windowsOf(rows: readonly EntryRow[], until: string): FitWindow[] {
  return fitWindows(entriesOf(rows).filter(({ on }) => on <= until));
}
