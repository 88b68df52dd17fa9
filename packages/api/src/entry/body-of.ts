import type { EntryRow } from '@quartermark/db';
import { type EntryInput, entryInput } from '@quartermark/engine/log';

/**
 * The body of a stored entry. A later version of the schema may find fault with what an earlier one let
 * in; it is shown as it stands all the same, because nothing that was typed may be lost.
 */
export function bodyOf(row: Pick<EntryRow, 'body'>): EntryInput {
  const parsed = entryInput.safeParse(row.body);
  return parsed.success ? parsed.data : (row.body as EntryInput);
}

/** The bodies of several, each with its ordinal. */
export function bodiesOf(rows: readonly EntryRow[]): (EntryInput & { recorded: number })[] {
  return rows.map((row) => ({ ...bodyOf(row), recorded: row.recorded }));
}
