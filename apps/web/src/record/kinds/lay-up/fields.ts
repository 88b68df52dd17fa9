import type { EntryOf } from '@quartermark/engine/log';
import type { RecordFields } from '../../record-fields.ts';
import type { StorageLine } from '../../storage-lines.ts';
import { type Members, type Reading, some, text, writtenRows } from '../../typed.ts';

export type LayUpFields = { lines: StorageLine[]; keysAt: string; until: string };

export const emptyLayUp = (): LayUpFields => ({ lines: [], keysAt: '', until: '' });

export const layUpFields = (entry: EntryOf<'layUp'>): LayUpFields => ({
  lines: entry.lines ?? [],
  keysAt: entry.keysAt ?? '',
  until: entry.until ?? '',
});

export function readLayUp({ layUp, on }: RecordFields, reading: Reading): Members {
  const until = text(layUp.until);
  if (until !== undefined && on !== '' && until < on)
    reading.problems.until =
      'The planned end is before the first day; swap them or leave it empty.';
  return {
    lines: some(writtenRows(layUp.lines, 'lines', reading, ({ what }) => what.trim() !== '')),
    keysAt: text(layUp.keysAt),
    until,
  };
}
