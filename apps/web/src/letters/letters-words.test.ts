import { expect, test } from 'vitest';
import {
  hourWords,
  lettersAnswer,
  missedWords,
  noLetterWords,
  restWords,
} from './letters-words.ts';

test('lettersAnswer() counts what is not read, and tells none from none unread', () => {
  expect(lettersAnswer(0, false)).toBe('No letter has come yet.');
  expect(lettersAnswer(0, true)).toBe('You have read every letter.');
  expect(lettersAnswer(1, true)).toBe('One letter you have not read.');
  expect(lettersAnswer(3, true)).toBe('Three letters you have not read.');
});

test('noLetterWords() says why none comes, with the day or the weekday one waits for', () => {
  const wish = { rhythm: { every: 'week', on: 7 }, pausedUntil: '2026-06-20' } as const;
  const said = (why: 'silent' | 'paused' | 'notTonight') =>
    noLetterWords({ why, wish, date: '2026-06-16' });
  expect(said('silent')).toContain('nothing is new');
  expect(said('paused')).toBe('No letter: yours are paused until Sat 20 June.');
  expect(said('notTonight')).toBe('No letter tonight: yours come for Sundays.');
});

test('restWords() says that what found no room comes next time', () => {
  expect(restWords({ count: 1, text: 'And one more thing' })).toContain('thing: it comes in');
  expect(restWords({ count: 2, text: 'And two more things' })).toContain(
    'things: they come in the next letters',
  );
});

test('missedWords() is silent where no night was missed', () => {
  expect(missedWords(0)).toBeNull();
  expect(missedWords(1)).toContain('the night before it');
  expect(missedWords(3)).toContain('the 3 nights before it');
});

test('hourWords() is the time of a clock of 24 hours', () => {
  expect([0, 360, 1439].map(hourWords)).toEqual(['00:00', '06:00', '23:59']);
});
