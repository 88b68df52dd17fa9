import type { MailState } from '@quartermark/api/client';
import { expect, test } from 'vitest';
import { mailWords } from './mail-words.ts';

const mail = (of: Partial<MailState>): MailState => ({
  state: 'waiting',
  to: 'garage@example.org',
  tries: 0,
  words: null,
  answerLost: false,
  at: null,
  nextAt: null,
  ...of,
});
const said = (of: Partial<MailState>) => mailWords(mail(of), 'Europe/London');

test('mailWords() says to whom and when a letter was delivered, and what the server said', () => {
  const words = said({
    state: 'delivered',
    tries: 2,
    words: '250 taken',
    at: '2026-06-15T05:00:00Z',
  });
  expect(words.state).toBe(
    'Delivered to garage@example.org on 15 June 2026, 06:00 (Europe/London)',
  );
  expect(words.more).toEqual(['It took 2 tries.', 'The server said: 250 taken']);
  expect(words.failed).toBe(false);
});

test('mailWords() says when a letter leaves, and after a refusal when it is tried again', () => {
  const nextAt = '2026-06-15T05:00:00Z';
  expect(said({ nextAt })).toEqual({
    state: 'Waits to leave to garage@example.org',
    more: ['It leaves on 15 June 2026, 06:00 (Europe/London).'],
    failed: false,
  });
  expect(said({ nextAt, tries: 1, words: '451 come back later' })).toEqual({
    state: 'Not delivered yet, 1 try',
    more: [
      'It is tried again on 15 June 2026, 06:00 (Europe/London).',
      'The server said: 451 come back later',
    ],
    failed: false,
  });
});

test('mailWords() calls what was given up not delivered, and tells of a second copy where an answer was lost', () => {
  const words = said({ state: 'givenUp', tries: 8, words: '550 no such box', answerLost: true });
  expect(words.failed).toBe(true);
  expect(words.state).toBe('Given up after 8 tries: not delivered to garage@example.org');
  expect(words.more.at(-1)).toContain('second copy');
});

test('mailWords() of a letter that only lies here names no mailbox', () => {
  expect(said({ state: 'notByMail', to: null }).state).toBe('Only here, not by mail');
});
