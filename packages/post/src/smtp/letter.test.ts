import { expect, test } from 'vitest';
import { checkLetter, type Letter, unsubscribeHeaders } from './letter.ts';

const LETTER: Letter = {
  from: { name: 'Garage', address: 'garage@house.test' },
  to: { address: 'owner@example.net' },
  subject: 'Overdue',
  text: '',
  html: '',
  messageId: '<night.7@house.test>',
  date: new Date('2026-06-15T04:00:00Z'),
};

const WRONG: [string, Partial<Letter>][] = [
  ['two mailboxes', { to: { address: 'a@b.test, c@d.test' } }],
  ['a mailbox with a second line', { to: { address: 'a@b.test\r\nBcc: c@d.test' } }],
  ['a mailbox in brackets', { from: { address: '<a@b.test>' } }],
  ['no mailbox', { to: { address: '' } }],
  ['a name with a second line', { from: { name: 'A\nBcc: c@d.test', address: 'a@b.test' } }],
  ['a subject with a second line', { subject: 'Overdue\r\nBcc: c@d.test' }],
  ['a Message-ID without brackets', { messageId: 'night.7@house.test' }],
  ['a Message-ID with a second line', { messageId: '<a@b>\r\n' }],
  ['no instant', { date: new Date(Number.NaN) }],
  ['a header with a second line', { headers: { 'X-A': 'a\r\nBcc: c@d.test' } }],
  ['a header that is the letter’s own', { headers: { BCC: 'c@d.test' } }],
  ['a header with a colon', { headers: { 'X-A: b': 'c' } }],
];

test('checkLetter() takes a plain letter', () => {
  expect(() => checkLetter(LETTER)).not.toThrow();
});

test.each(WRONG)('checkLetter() refuses %s, without repeating it', (_what, more) => {
  expect(() => checkLetter({ ...LETTER, ...more })).toThrow(RangeError);
  expect(() => checkLetter({ ...LETTER, ...more })).not.toThrow(/test,|Bcc/);
});

test('unsubscribeHeaders() are one https address and the sign of one press (RFC 8058)', () => {
  expect(unsubscribeHeaders('https://house.test/u/k')).toEqual({
    'List-Unsubscribe': '<https://house.test/u/k>',
    'List-Unsubscribe-Post': 'List-Unsubscribe=One-Click',
  });
});

test.each([
  'http://house.test/u',
  'mailto:a@house.test',
  'https://house.test/a>,<http://other.test',
  'https://house.test/a b',
  'https://house.test/\r\nBcc: c',
  'house.test',
])('unsubscribeHeaders(%j) are refused', (url) => {
  expect(() => unsubscribeHeaders(url)).toThrow(RangeError);
});
