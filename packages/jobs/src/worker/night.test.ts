import { expect, test } from 'vitest';
import { chunksOf } from './night.ts';

test('chunksOf() cuts a garage into chunks of at most 200 and loses no car', () => {
  const cars = Array.from({ length: 401 }, (_, at) => `car-${at}`);
  const chunks = chunksOf('g', cars, '2026-03-11');
  expect(chunks.map(({ carIds }) => carIds.length)).toEqual([200, 200, 1]);
  expect(chunks.flatMap(({ carIds }) => carIds)).toEqual(cars);
});

test('chunksOf() makes nothing of nothing', () => {
  expect(chunksOf('g', [], '2026-03-11')).toEqual([]);
});
