import fc from 'fast-check';
import { expect, test } from 'vitest';
import { afterTomorrow } from './after-tomorrow.ts';
import type { Entry, EntryInput } from './entry.ts';
import { looksTheSame } from './looks-the-same.ts';
import { sortEntries } from './sort-entries.ts';

const zone = 'Europe/Berlin';
const stored = (entry: EntryInput, recorded: number): Entry => ({
  ...entry,
  recorded,
  revision: 1,
  removed: false,
});
const session = (id: string, on: string, more = {}): EntryInput => ({
  kind: 'session',
  use: 'circuit',
  sessions: 1,
  id,
  on,
  zone,
  ...more,
});
const service = (id: string, on: string, more = {}): EntryInput => ({
  kind: 'service',
  items: ['fluid'],
  id,
  on,
  zone,
  ...more,
});
const ids = (entries: EntryInput[]) => sortEntries(entries).map(({ id }) => id);

test('sortEntries() puts an untimed use before an untimed service of its day', () => {
  expect(ids([service('s', '2026-05-02'), session('u', '2026-05-02')])).toEqual(['u', 's']);
});

test('sortEntries() lets a known time decide', () => {
  const uses = session('u', '2026-05-02', { time: '09:00' });
  expect(ids([uses, service('s', '2026-05-02', { time: '07:00' })])).toEqual(['s', 'u']);
  expect(ids([service('s', '2026-05-02', { time: '10:00' }), uses])).toEqual(['u', 's']);
});

test('sortEntries() puts work said to be before driving before everything of the day', () => {
  const first = service('s', '2026-05-02', { dayOrder: 'beforeDriving' });
  expect(ids([session('u', '2026-05-02', { time: '06:00' }), first])).toEqual(['s', 'u']);
});

test('sortEntries() falls back to the order of recording', () => {
  const a = stored(session('a', '2026-05-02'), 2);
  const b = stored(session('b', '2026-05-02'), 1);
  expect(ids([a, b])).toEqual(['b', 'a']);
});

test('sortEntries() gives the same order for every shuffling', () => {
  const entries = Array.from({ length: 8 }, (_, index) =>
    index % 2 === 0
      ? stored(session(`u${index}`, `2026-05-0${1 + (index % 3)}`), index)
      : stored(service(`s${index}`, `2026-05-0${1 + (index % 3)}`), index),
  );
  const sorted = ids(entries);
  fc.assert(
    fc.property(fc.shuffledSubarray(entries, { minLength: 8 }), (shuffled) => {
      expect(ids(shuffled)).toEqual(sorted);
    }),
  );
});

test('looksTheSame() recognises one session written twice', () => {
  expect(looksTheSame(session('a', '2026-05-02'), session('b', '2026-05-02'))).toBe(true);
});

test('looksTheSame() tells other days, amounts, classes and times apart', () => {
  const one = session('a', '2026-05-02', { time: '09:00' });
  expect(looksTheSame(one, session('b', '2026-05-03', { time: '09:00' }))).toBe(false);
  expect(looksTheSame(one, session('b', '2026-05-02', { sessions: 2 }))).toBe(false);
  expect(looksTheSame(one, session('b', '2026-05-02', { use: 'autocross' }))).toBe(false);
  expect(looksTheSame(one, session('b', '2026-05-02', { time: '11:00' }))).toBe(false);
  expect(looksTheSame(one, one)).toBe(false);
});

test('looksTheSame() compares distances across units', () => {
  const drive = (id: string, text: string, unit: 'km' | 'mi'): EntryInput => ({
    kind: 'drive',
    use: 'road',
    id,
    on: '2026-05-02',
    zone,
    distance: { text, unit },
  });
  expect(looksTheSame(drive('a', '1.609344', 'km'), drive('b', '1', 'mi'))).toBe(true);
});

test('looksTheSame() never holds two services or notes for one', () => {
  expect(looksTheSame(service('a', '2026-05-02'), service('b', '2026-05-02'))).toBe(false);
});

test('afterTomorrow() lets today and tomorrow through, across the end of a year', () => {
  expect(afterTomorrow('2026-12-31', '2026-12-31')).toBe(false);
  expect(afterTomorrow('2027-01-01', '2026-12-31')).toBe(false);
  expect(afterTomorrow('2027-01-02', '2026-12-31')).toBe(true);
});
