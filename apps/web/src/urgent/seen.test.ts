import { expect, test } from 'vitest';
import { isSeen, withSeen } from './seen.ts';

const wheels = { carId: 'a1', key: 'wheelsOff__2026-06-14' };

test('withSeen() lays one fact of a car aside, and isSeen() knows it from the next', () => {
  const cookie = withSeen('', wheels);
  expect(isSeen('', wheels)).toBe(false);
  expect(isSeen(cookie, wheels)).toBe(true);
  expect(isSeen(cookie, { ...wheels, key: 'wheelsOff__2026-06-15' })).toBe(false);
  expect(isSeen(cookie, { ...wheels, carId: 'b2' })).toBe(false);
});

test('withSeen() keeps the last word of a car, and what was laid aside of others', () => {
  const other = { carId: 'b2', key: '_low_2026-06-01' };
  const changed = { ...wheels, key: 'wheelsOff_low_2026-06-14' };
  const cookie = [wheels, other, changed].reduce(withSeen, '');
  expect(isSeen(cookie, wheels)).toBe(false);
  expect(isSeen(cookie, changed)).toBe(true);
  expect(isSeen(cookie, other)).toBe(true);
});

test('withSeen() stays within a cookie, whatever is laid aside', () => {
  const many = Array.from({ length: 400 }, (_, at) => ({
    carId: `0000000${String(at).padStart(4, '0')}-0000-4000-8000-000000000000`,
    key: 'wheelsOff_none_2026-06-14',
  }));
  const cookie = many.reduce(withSeen, '');
  expect(cookie.length).toBeLessThan(3000);
  expect(cookie).toMatch(/^[\w.~-]+$/);
  expect(isSeen(cookie, many[399] as (typeof many)[number])).toBe(true);
  expect(isSeen(cookie, many[0] as (typeof many)[number])).toBe(false);
});
