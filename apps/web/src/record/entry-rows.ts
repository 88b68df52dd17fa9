import { entryLine, type NamedItems, type Names } from '@quartermark/engine/display';
import type { EntryInput } from '@quartermark/engine/log';
import type { VersionRow } from '../forms/BothVersions.tsx';
import { dayWords } from './day-words.ts';

/** What an entry said, in words and in order; every entry has the same rows. */
export function entryRows(
  entry: EntryInput,
  items: NamedItems,
  names: Names = {},
): readonly { label: string; words: string }[] {
  const { title, detail } = entryLine(entry, items, names);
  const figures = { label: title, words: detail === '' ? 'no figures' : detail };
  const photos = entry.photos?.length ?? 0;
  return [
    { label: 'When', words: dayWords(entry) },
    // "Note" is the name of its text
    entry.kind === 'note' ? { ...figures, label: 'Beside it' } : figures,
    { label: 'Note', words: entry.note ?? 'none' },
    ...(photos === 0 ? [] : [{ label: 'Photos', words: String(photos) }]),
  ];
}

/** Two versions of one entry beside each other, row by row. */
export function bothRows(mine: EntryInput, newest: EntryInput, items: NamedItems): VersionRow[] {
  const rows = entryRows(mine, items);
  const other = entryRows(newest, items);
  // the photos may be on one side only
  const all = rows.length >= other.length ? rows : other;
  return all.map(({ label }, at) => ({
    label,
    mine: rows[at]?.words ?? 'none',
    newest: other[at]?.words ?? 'none',
  }));
}
