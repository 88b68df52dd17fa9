import { expect, test } from 'vitest';
import { unrecordedWords } from './unrecorded-words.ts';

const day = { name: 'Circuit day', start: '2026-06-06' };

test.each([
  [day, ['Finch'], 'Circuit day, 6 June: nothing recorded for Finch. What did it do?'],
  [
    { ...day, end: '2026-06-07' },
    ['Finch', 'Otter'],
    'Circuit day, 6 June to 7 June: nothing recorded for Finch and Otter. What did they do?',
  ],
  [
    { ...day, start: '2025-12-31' },
    ['A', 'B', 'C', 'D'],
    'Circuit day, 31 December 2025: nothing recorded for A, B and 2 more. What did they do?',
  ],
])('unrecordedWords() of %j and %j', (event, names, words) => {
  expect(unrecordedWords(event, names, '2026-06-15')).toBe(words);
});
