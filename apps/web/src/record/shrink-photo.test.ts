import { expect, test } from 'vitest';
import { fitted } from './shrink-photo.ts';

test('fitted() keeps the ratio and makes the longest side 2,560 px', () => {
  expect(fitted(5120, 2880)).toEqual({ width: 2560, height: 1440 });
  expect(fitted(3000, 6000)).toEqual({ width: 1280, height: 2560 });
});

test('fitted() makes no picture larger than it is, and none of no width', () => {
  expect(fitted(640, 480)).toEqual({ width: 640, height: 480 });
  expect(fitted(100_000, 2)).toEqual({ width: 2560, height: 1 });
});
