import { describe, expect, test } from 'vitest';
import { orderWords, partsWords } from './order-words.ts';

const asOf = '2026-06-15';
const coming = { on: '2026-06-03', expected: '2026-06-22' };

test('orderWords() says when it was ordered and is expected, and that it is not here yet', () => {
  expect(orderWords(coming, { asOf })).toBe('ordered 3 June, expected 22 June');
  expect(orderWords({ on: '2025-12-30' }, { asOf })).toBe(
    'ordered 30 December 2025, no day expected',
  );
  const waited = { on: '2026-06-03', expected: '2026-06-12' };
  expect(orderWords(waited, { asOf })).toBe('ordered 3 June, expected 12 June and not here yet');
  expect(orderWords({ ...waited, arrived: '2026-06-13' }, { asOf })).toBe(
    'ordered 3 June, arrived 13 June',
  );
});

describe('partsWords()', () => {
  const item = { leadDays: 12 };
  const say = (by: Parameters<typeof partsWords>[0], leadDays = 12) =>
    partsWords(by, { ...item, leadDays }, { asOf });

  test('partsWords() says plainly that parts come after the likely day', () => {
    expect(say({ kind: 'ordered', order: coming, late: true })).toBe(
      'parts ordered 3 June, expected 22 June: arrives after it is likely due',
    );
    expect(say({ kind: 'ordered', order: coming, late: false })).not.toContain('after');
  });

  test('partsWords() says what is on the shelf', () => {
    const order = { on: '2026-06-03', arrived: '2026-06-09' };
    expect(say({ kind: 'onTheShelf', order })).toBe('parts arrived 9 June, on the shelf');
  });

  test('partsWords() says by when to order, now where that has passed, nothing where nothing takes days', () => {
    expect(say({ kind: 'orderBy', day: '2026-06-18', feasible: true })).toBe(
      'order the parts by 18 June, they take 12 days',
    );
    expect(say({ kind: 'orderBy', day: '2026-06-14', feasible: false }, 1)).toBe(
      'order the parts now, they take 1 day',
    );
    expect(say({ kind: 'orderBy', day: '2026-06-18', feasible: true }, 0)).toBeNull();
  });
});
