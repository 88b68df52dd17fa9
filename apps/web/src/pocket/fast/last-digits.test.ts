import { expect, test } from 'vitest';
import { lastDigits, readingFrom, wholeOf } from './last-digits.ts';

test.each([
  ['120', 38_950, 39_120],
  ['951', 38_950, 38_951],
  ['950', 38_950, 38_950],
  ['005', 38_950, 39_005],
  ['5', 38_950, 39_005],
  ['39120', 38_950, 39_120],
  ['120', null, 120],
  ['000', 999_950, 1_000_000],
])('readingFrom(%s, %s) is %i', (typed, last, reading) => {
  expect(readingFrom(typed, last)).toBe(reading);
});

test.each(['', '12a', '-5', '12345678', '1.5'])('readingFrom(%j) is nothing', (typed) => {
  expect(readingFrom(typed, 38_950)).toBeNull();
});

test('wholeOf() reads a reading as it was typed, and lastDigits() keeps its noughts', () => {
  expect(wholeOf('38,950')).toBe(38_950);
  expect(wholeOf('41 350.9')).toBe(41_350);
  expect(wholeOf('about 40')).toBeNull();
  expect(lastDigits(39_005)).toBe('005');
});
