import { describe, expect, test } from 'vitest';
import { nearDay, needStatusWords, readyWords, spokenDay } from './verdict-words.ts';

const monday = { asOf: '2026-06-08' };

test('nearDay() leaves the month out only while the number of the day is of one day alone', () => {
  expect(nearDay('2026-06-11', monday)).toBe('Thu 11');
  expect(nearDay('2026-07-05', monday)).toBe('Sun 5');
  expect(nearDay('2026-07-08', monday)).toBe('Wed 8 July');
  expect(nearDay('2026-06-07', monday)).toBe('Sun 7 June');
  expect(nearDay('2027-06-11', monday)).toBe('Fri 11 June 2027');
  expect(nearDay('2026-06-11', { asOf: null })).toBe('Thu 11 June 2026');
});

test('spokenDay() names the day of the week within a week, and a date beyond', () => {
  expect(spokenDay('2026-06-08', monday)).toBe('today');
  expect(spokenDay('2026-06-09', monday)).toBe('tomorrow');
  expect(spokenDay('2026-06-13', monday)).toBe('Saturday');
  expect(spokenDay('2026-06-15', monday)).toBe('Mon 15 June');
  expect(spokenDay('2026-06-07', monday)).toBe('Sun 7 June');
});

describe('readyWords()', () => {
  test.each([
    [{ word: 'ready', by: null }, 'ready', 'Ready, by the log'],
    [{ word: 'canBeReady', by: '2026-06-11' }, 'afterWork', 'Can be ready by Thu 11'],
    [{ word: 'notInTime', by: null }, 'notReady', 'Not in time'],
    [{ word: 'notOnRecord', by: null }, 'readyUnknown', 'Not on record'],
  ] as const)('readyWords() of %j', (verdict, mark, word) => {
    expect(readyWords(verdict, monday)).toEqual({ mark, word });
  });
});

test('needStatusWords() has a word and a mark of its own for each', () => {
  const all = (['met', 'metAfterWork', 'unknown', 'notMet'] as const).map(needStatusWords);
  expect(all.map(({ word }) => word)).toEqual([
    'Fine',
    'After the work',
    'Not on record',
    'Not met',
  ]);
  expect(new Set(all.map(({ mark }) => mark)).size).toBe(4);
});
