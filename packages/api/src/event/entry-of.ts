import type { EntryRow } from '@quartermark/db';
import type { Entry } from '@quartermark/engine/log';
import { bodyOf } from '../entry/body-of.ts';

/** A stored entry as the engine reads it, however an earlier schema let it in. */
export const entryOf = (row: EntryRow): Entry => ({
  ...bodyOf(row),
  recorded: row.recorded,
  revision: row.revision,
  removed: row.removedAt !== null,
});
