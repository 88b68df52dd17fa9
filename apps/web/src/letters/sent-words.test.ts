import { expect, test } from 'vitest';
import { sentAnswer, sentTitle } from './sent-words.ts';

const row = (state: 'delivered' | 'waiting' | 'givenUp') => ({ mail: { state } });

test('sentAnswer() never calls what waits or was given up arrived', () => {
  expect(sentAnswer([])).toBe('Nothing has left the house.');
  expect(sentAnswer([row('delivered')])).toBe('All of the last one arrived.');
  expect(sentAnswer([row('delivered'), row('waiting'), row('givenUp')])).toBe(
    'Of the last 3, 1 not delivered and 1 on the way.',
  );
});

test('sentTitle() says what it was, of which day and to whom', () => {
  const of = { date: '2026-06-15', whom: 'Tam' };
  expect(sentTitle({ kind: 'letter', ...of })).toBe('Letter of Mon 15 June 2026 to Tam');
  expect(sentTitle({ kind: 'test', ...of, whom: null })).toContain('a member who has left');
  expect(sentTitle({ kind: 'hook', ...of })).toBe('Webhook of Mon 15 June 2026');
});
