import { expect, test } from 'vitest';
import { formatDay } from './format-day.ts';
import { formatNumber } from './format-number.ts';
import { formatDistance, formatVolume } from './format-quantity.ts';
import { capital, countWord, listWords, readsAsPlural } from './grammar.ts';
import { levelWords } from './level-words.ts';

test.each([
  [0, 0, '0'],
  [999, 0, '999'],
  [1000, 0, '1,000'],
  [1234567.891, 2, '1,234,567.89'],
  [12.5, 2, '12.5'],
  [-0.04, 1, '0'],
  [-1500, 0, '-1,500'],
  [999.99, 1, '1,000'],
  [0.125, 3, '0.125'],
  [1000.1234, 4, '1,000.1234'],
])('formatNumber() writes %d with %d decimals as %s', (value, decimals, text) => {
  expect(formatNumber(value, decimals)).toBe(text);
});

test('formatNumber() refuses what is no number', () => {
  expect(() => formatNumber(Number.NaN, 0)).toThrow(/NaN, it should be finite/);
});

test.each([
  [16093.44, 'mi', '10,000 mi'],
  [9999.6, 'km', '10,000 km'],
  [9.96, 'km', '10 km'],
  [2.44, 'km', '2.4 km'],
  [-350.2, 'km', '-350 km'],
] as const)('formatDistance() writes %d km in %s as %s', (km, unit, text) => {
  expect(formatDistance(km, unit)).toBe(text);
});

test.each([
  [0.5, 'l', '0.5 L'],
  [0.25, 'ml', '250 ml'],
  [0.946352946 * 1.5, 'usQt', '1.5 US qt'],
] as const)('formatVolume() writes %d L in %s as %s', (litres, unit, text) => {
  expect(formatVolume(litres, unit)).toBe(text);
});

test('formatDay() writes day, month and year, without a clock or a zone', () => {
  expect(formatDay('2026-05-02')).toBe('2 May 2026');
  expect(formatDay('1999-12-31')).toBe('31 December 1999');
  expect(() => formatDay('2026-13-01')).toThrow(RangeError);
  expect(() => formatDay('2026-5-2')).toThrow(RangeError);
});

test.each([
  [0, 'at MIN'],
  [0.25, 'a quarter'],
  [0.5, 'half'],
  [0.75, 'three quarters'],
  [1, 'at MAX'],
  [1.01, 'at MAX'],
  [1.25, 'over MAX'],
  [-0.1, 'below MIN'],
  [0.55, 'about half'],
  [0.1, 'about MIN'],
  [0.9, 'about MAX'],
  [null, 'not on record'],
])('levelWords() calls a fraction of %s "%s"', (fraction, words) => {
  expect(levelWords({ fraction, mark: null })).toBe(words);
});

test('levelWords() says the marks that have no number', () => {
  expect(levelWords({ fraction: null, mark: 'none' })).toBe('none on the stick');
  expect(levelWords({ fraction: null, mark: 'over' })).toBe('over MAX');
});

test.each([
  ['Front pads', true],
  ['Oil and filter', true],
  ['Brake hoses (rear)', true],
  ['Engine oil', false],
  ['Chassis', false],
  ['Drag harness', false],
  ['', false],
])('readsAsPlural() of "%s" is %s', (name, plural) => {
  expect(readsAsPlural(name)).toBe(plural);
});

test('listWords() joins names and counts what goes beyond', () => {
  expect(listWords([])).toBe('');
  expect(listWords(['a'])).toBe('a');
  expect(listWords(['a', 'b'])).toBe('a and b');
  expect(listWords(['a', 'b', 'c'])).toBe('a, b and c');
  expect(listWords(['a', 'b', 'c', 'd', 'e'])).toBe('a, b and 3 more');
});

test('countWord() and capital() begin a sentence', () => {
  expect(countWord(2)).toBe('Two');
  expect(countWord(13)).toBe('13');
  expect(capital('öl')).toBe('Öl');
  expect(capital('')).toBe('');
});
