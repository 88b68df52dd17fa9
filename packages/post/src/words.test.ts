import { expect, test } from 'vitest';
import { cleanWords } from './words.ts';

test.each([
  ['250 ok\r\nX: y\u0000\u001b[31m', '250 ok X: y [31m'],
  ['safe\u202egnp.exe\u200b \ud800 end\u2028x', 'safe gnp.exe end x'],
  ['550 <joe@example.net>: no; a.b@c', '550 <(address)>: no; (address)'],
  ['  Grüße – 車  ', 'Grüße – 車'],
])('cleanWords(%j) is %j', (text, clean) => {
  expect(cleanWords(text)).toBe(clean);
});

test('cleanWords() keeps 200 characters and never half of one', () => {
  expect(cleanWords('🏁'.repeat(300))).toBe('🏁'.repeat(200));
  expect(cleanWords('x'.repeat(100_000))).toHaveLength(200);
});

test('cleanWords() leaves secrets out wherever they stand', () => {
  expect(cleanWords('no opensesame, opensesame!', ['opensesame', ''])).toBe(
    'no (secret), (secret)!',
  );
});
