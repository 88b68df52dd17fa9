import { entryLine, type NamedItems } from '@quartermark/engine/display';
import type { EntryInput } from '@quartermark/engine/log';
import type { VersionRow } from '../forms/BothVersions.tsx';
import { dayWords } from './day-words.ts';

/** What an entry said, in words and in order; every entry has the same rows. */
export function entryRows(
  entry: EntryInput,
  items: NamedItems,
): readonly { label: string; words: string }[] {
  const { title, detail } = entryLine(entry, items);
  const figures = { label: title, words: detail === '' ? 'no figures' : detail };
  return [
    { label: 'When', words: dayWords(entry) },
    // "Note" is the name of its text
    entry.kind === 'note' ? { ...figures, label: 'Beside it' } : figures,
    { label: 'Note', words: entry.note ?? 'none' },
  ];
}

/** Two versions of one entry beside each other, row by row. */
export function bothRows(mine: EntryInput, newest: EntryInput, items: NamedItems): VersionRow[] {
  const other = entryRows(newest, items);
  return entryRows(mine, items).map(({ label, words }, at) => ({
    label,
    mine: words,
    newest: other[at]?.words ?? 'not given',
  }));
}
