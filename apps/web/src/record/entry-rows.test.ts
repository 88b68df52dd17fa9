import { type EntryDraft, entryInput } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import { dayWords } from './day-words.ts';
import { bothRows, entryRows } from './entry-rows.ts';

const of = (draft: object) =>
  entryInput.parse({ id: 'e-1', zone: 'Europe/Berlin', on: '2026-05-02', ...draft } as EntryDraft);

test('dayWords() gives a time, or the place in the day from the entry’s own side', () => {
  expect(dayWords(of({ kind: 'note', note: 'x' }))).toBe('2 May 2026');
  expect(dayWords(of({ kind: 'note', note: 'x', time: '07:00' }))).toBe('2 May 2026, 07:00');
  const dayOrder = 'beforeDriving';
  expect(dayWords(of({ kind: 'service', items: ['i'], dayOrder }))).toBe(
    '2 May 2026, before driving',
  );
  expect(dayWords(of({ kind: 'drive', use: 'road', dayOrder }))).toBe(
    '2 May 2026, before that day’s work',
  );
});

test('entryRows() has a row each for the day, the figures and the note', () => {
  expect(entryRows(of({ kind: 'oilTopUp', volume: { text: '0,30', unit: 'l' } }), [])).toEqual([
    { label: 'When', words: '2 May 2026' },
    { label: 'Oil added', words: '0,30 L' },
    { label: 'Note', words: 'none' },
  ]);
});

test('entryRows() gives no two rows of a note the same name', () => {
  const labels = entryRows(of({ kind: 'note', note: 'x' }), []).map(({ label }) => label);
  expect(new Set(labels).size).toBe(labels.length);
});

test('bothRows() sets two versions of one entry beside each other', () => {
  const mine = of({ kind: 'session', use: 'circuit', sessions: 4 });
  const newest = of({ kind: 'session', use: 'autocross', sessions: 5, note: 'wet' });
  expect(bothRows(mine, newest, [])).toEqual([
    { label: 'When', mine: '2 May 2026', newest: '2 May 2026' },
    { label: 'Circuit', mine: '4 sessions', newest: '5 sessions' },
    { label: 'Note', mine: 'none', newest: 'wet' },
  ]);
});
