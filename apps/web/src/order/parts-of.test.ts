import type { ItemResult } from '@quartermark/engine';
import { expect, test } from 'vitest';
import { partsOf } from './parts-of.ts';

const today = '2026-06-15';
const result: ItemResult = {
  id: 'x',
  state: 'dueSoon',
  reason: null,
  reasonCode: null,
  service: '2026-01-10',
  binding: 'km',
  limits: [],
  dueDate: { p10: '2026-06-20', p50: '2026-06-24', p90: '2026-07-18' },
  evidence: [],
};
const item = { leadDays: 3 };
const said = (more: Partial<Parameters<typeof partsOf>[0]>) =>
  partsOf({ item, orders: [], result, today, ...more })?.words ?? null;

test('partsOf() counts back from the earliest likely day', () => {
  expect(said({})).toBe('order the parts by 17 June, they take 3 days');
  expect(said({ item: { leadDays: 12 } })).toBe('order the parts now, they take 12 days');
  expect(said({ result: { ...result, state: 'overdue' } })).toBe(
    'order the parts now, they take 3 days',
  );
});

test('partsOf() has nothing to say of what takes no days, or has no date', () => {
  expect(said({ item: { leadDays: 0 } })).toBeNull();
  expect(said({ result: null })).toBeNull();
});

test('partsOf() says plainly that parts come after the likely day', () => {
  const late = { on: '2026-06-12', expected: '2026-06-26' };
  expect(said({ orders: [late] })).toContain('arrives after it is likely due');
  expect(said({ orders: [{ ...late, expected: '2026-06-24' }] })).not.toContain('after');
  // it has run out already; that is said by its state
  expect(said({ orders: [late], result: { ...result, state: 'overdue' } })).not.toContain('after');
});

test('partsOf() speaks of an order though nothing is worked out yet, until the item is done', () => {
  const here = { on: '2026-06-03', arrived: '2026-06-09' };
  expect(said({ orders: [here], result: null })).toBe('parts arrived 9 June, on the shelf');
  expect(said({ orders: [here], result: { ...result, service: '2026-06-12' } })).toContain('order');
});
