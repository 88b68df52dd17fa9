import { expect, test } from 'vitest';
import { holdOrder } from './hold-order.ts';

const rows = (...ids: string[]) => ids.map((carId) => ({ carId, fresh: true }));
const ids = (held: { rows: { carId: string }[] }) => held.rows.map((row) => row.carId);

const hold = (held: string[], shown: ReturnType<typeof rows>) =>
  holdOrder(held, shown, ({ carId }) => carId);

test('holdOrder() keeps the order shown when another is now more urgent', () => {
  const held = hold(['a', 'b', 'c'], rows('c', 'a', 'b'));
  expect(ids(held)).toEqual(['a', 'b', 'c']);
  expect(held.moved).toBe(true);
  expect(held.rows[0]?.fresh).toBe(true);
});

test('holdOrder() puts rows not shown before last, in their own order', () => {
  const held = hold(['a', 'b'], rows('x', 'a', 'b', 'y'));
  expect(ids(held)).toEqual(['a', 'b', 'x', 'y']);
});

test('holdOrder() drops what is gone and says nothing moved', () => {
  expect(hold(['a', 'b', 'c'], rows('a', 'c'))).toEqual({
    rows: rows('a', 'c'),
    moved: false,
  });
});

test('holdOrder() takes the proper order where nothing was shown yet', () => {
  expect(hold([], rows('b', 'a'))).toEqual({ rows: rows('b', 'a'), moved: false });
});
