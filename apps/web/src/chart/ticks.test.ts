import { expect, test } from 'vitest';
import { ticks } from './ticks.ts';

test('ticks() are round numbers', () => {
  expect(ticks(26, 5)).toEqual([0, 10, 20]);
  expect(ticks(6.9, 4)).toEqual([0, 2, 4, 6]);
  expect(ticks(0, 4)).toEqual([0]);
});
