import { expect, test } from 'vitest';
import { carBook, km } from '../../test/car-book.ts';
import { analyseBook } from '../readers/analyse-book.ts';
import type { Analysis } from '../wear/result.ts';
import { dueLinesOf } from './due-line.ts';

const oil = {
  id: 'oil',
  name: 'Engine oil',
  limits: [
    { measure: 'km' as const, value: 5_000, unit: 'mi' as const },
    { measure: 'months' as const, value: 12 },
  ],
  baseline: { on: '2025-06-20', odometer: km(20_000), historyComplete: true },
};
const reading = (on: string, value: number) => ({
  kind: 'odometer' as const,
  on,
  odometer: km(value),
});

/** A book's lines, its first item with dates as a forecast would give them. */
function lines(book: ReturnType<typeof carBook>, dueDate?: Analysis['items'][0]['dueDate']) {
  const analysis = analyseBook(book);
  const [first, ...rest] = analysis.items;
  if (!first) throw new Error('the book has no item');
  const { dueDate: _, ...plain } = first;
  const items = [{ ...plain, ...(dueDate && { dueDate }) }, ...rest];
  return dueLinesOf(book, { ...analysis, items });
}

test('dueLinesOf() gives the dates of the forecast, and null where there is none', () => {
  const book = carBook([reading('2026-06-01', 24_000)], { items: [oil] });
  const dates = { p10: '2026-06-20', p50: '2026-06-20', p90: null };
  const [line] = lines(book, dates);
  expect(line).toMatchObject({
    state: 'dueSoon',
    early: '2026-06-20',
    likely: '2026-06-20',
    dates: { early: '2026-06-20', likely: '2026-06-20', late: null },
  });
  expect(line).toMatchObject({ name: 'Engine oil', lastDone: '2025-06-20', overdueSince: null });
  const [without] = lines(book);
  expect(without?.dates).toEqual({ early: null, likely: null, late: null });
  expect(without).not.toHaveProperty('likely');
});

test('dueLinesOf() says since when an item is over: the limit passed first, its last day not counted', () => {
  const reached = carBook([reading('2026-06-01', 29_000)], { items: [oil] });
  const [amount] = lines(reached);
  expect(amount).toMatchObject({ state: 'overdue', unit: 'mi' });
  // 9,000 km in 346 days from 20 June 2025; 5,000 mi = 8,046.72 km are full on the 310th
  expect(amount?.overdueSince).toBe('2026-04-26');
  const calendar = carBook([], { items: [oil], asOf: '2026-06-25' });
  expect(lines(calendar)[0]?.overdueSince).toBe('2026-06-21');
});

test('dueLinesOf() counts from what made an item due at once', () => {
  const asked = carBook([], { items: [{ ...oil, dueSince: '2026-06-10' }] });
  expect(lines(asked)[0]).toMatchObject({ reasonCode: 'asked', overdueSince: '2026-06-10' });
  const triggers = { incidents: ['softPedal' as const] };
  const incident = { kind: 'incident' as const, on: '2026-06-13', what: 'softPedal' as const };
  const triggered = carBook([incident], { items: [{ ...oil, triggers }] });
  expect(lines(triggered)[0]).toMatchObject({ reasonCode: 'trigger', overdueSince: '2026-06-13' });
});

test('dueLinesOf() says until when parts are to be ordered, or what stands ordered', () => {
  const dates = { p10: '2026-06-30', p50: '2026-07-20', p90: null };
  const items = [{ ...oil, leadDays: 12 }];
  const parts = (more: { items?: typeof items; orders?: object[] }) => {
    const book = carBook([reading('2026-06-01', 24_000)], { items: more.items ?? items });
    const orders = (more.orders ?? []) as NonNullable<typeof book.orders>;
    return lines({ ...book, orders }, dates)[0]?.parts;
  };
  expect(parts({})).toEqual({ kind: 'orderBy', day: '2026-06-18', feasible: true });
  expect(parts({ items: [{ ...oil, leadDays: 0 }] })).toBeNull();
  const order = { on: '2026-06-10', expected: '2026-07-21' };
  expect(parts({ orders: [{ id: 'o', item: 'oil', ...order }] })).toEqual({
    kind: 'ordered',
    order,
    late: true,
  });
  expect(parts({ orders: [{ id: 'o', item: 'plugs', ...order }] })).toMatchObject({
    kind: 'orderBy',
  });
});
