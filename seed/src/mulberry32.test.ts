import { expect, test } from 'vitest';
import { mulberry32 } from './mulberry32.ts';

test('mulberry32() gives the number its own example names', () => {
  expect(mulberry32(1)()).toBe(0.6270739405881613);
});

test('mulberry32() repeats itself for the same seed and not for another', () => {
  const draw = (seed: number) => Array.from({ length: 20 }, mulberry32(seed));
  expect(draw(7)).toEqual(draw(7));
  expect(draw(7)).not.toEqual(draw(8));
});

test('mulberry32() stays from 0 to below 1 and fills the range evenly', () => {
  const next = mulberry32(42);
  const tenths = Array.from({ length: 10 }, () => 0);
  for (let drawn = 0; drawn < 10_000; drawn++) {
    const value = next();
    expect(value >= 0 && value < 1).toBe(true);
    tenths[Math.floor(value * 10)] = (tenths[Math.floor(value * 10)] ?? 0) + 1;
  }
  for (const count of tenths) expect(Math.abs(count - 1000)).toBeLessThan(150);
});
