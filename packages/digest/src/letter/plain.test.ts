import { expect, test } from 'vitest';
import { plain } from './plain.ts';

test.each([
  ['Brindle 2\r\nBcc: a@b', 60, 'Brindle 2 Bcc: a@b'],
  ['  two\t\tblanks \u2028 and more ', 60, 'two blanks and more'],
  ['\u202eturned\u2066 round\u200b', 60, 'turned round'],
  ['half a pair \ud800', 60, 'half a pair \ufffd'],
  ['bell\u0007 and null\u0000', 60, 'bell and null'],
  ['😀😀😀😀', 3, '😀😀…'],
  ['exactly', 7, 'exactly'],
])('plain(%j, %i)', (typed, most, line) => {
  expect(plain(typed, most)).toBe(line);
});
