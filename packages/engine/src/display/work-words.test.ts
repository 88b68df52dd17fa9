import { describe, expect, test } from 'vitest';
import type { OrderBy } from '../orders/order-by.ts';
import { toOrder, type Work, workDays, workParts } from './work-words.ts';

const asOf = '2026-06-15';
const work = (more: Partial<Work> = {}): Work => ({
  what: 'Flush the brake fluid',
  latest: '2026-06-19',
  earliest: null,
  parts: null,
  leadDays: 4,
  feasible: true,
  ...more,
});
const orderBy = (day: string, feasible = true): OrderBy => ({ kind: 'orderBy', day, feasible });

describe('workDays()', () => {
  test.each([
    [{}, 'by Fri 19 at the latest'],
    [{ latest: asOf }, 'today at the latest'],
    [{ latest: null }, 'as soon as can be'],
    [
      { earliest: '2026-06-17' },
      'not before Wed 17, or it would not last; by Fri 19 at the latest',
    ],
    [{ feasible: false }, 'no longer possible in time'],
  ])('workDays() of %j is "%s"', (more, words) => {
    expect(workDays(work(more), { asOf })).toBe(words);
  });
});

describe('toOrder()', () => {
  test.each([
    [orderBy(asOf), 4, 'today'],
    [orderBy('2026-06-16'), 4, 'later'],
    // late for the day it could run out, not for the event
    [orderBy('2026-06-14', false), 4, 'today'],
    // had over the counter
    [orderBy(asOf), 0, null],
    [null, 4, null],
    [{ kind: 'ordered', order: { on: '2026-06-12' }, late: false }, 4, null],
  ] as const)('toOrder() of %j that take %d days is %s', (parts, leadDays, when) => {
    expect(toOrder({ parts, leadDays, feasible: true }, asOf)).toBe(when);
  });

  test('toOrder() is too late where the work is not possible in time', () => {
    expect(toOrder({ parts: orderBy(asOf), leadDays: 9, feasible: false }, asOf)).toBe('late');
  });
});

describe('workParts()', () => {
  const say = (parts: OrderBy | null, more: Partial<Work> = {}) =>
    workParts(work({ parts, ...more }), { asOf });

  test('workParts() says by when to order, today first of all, and when it is too late', () => {
    expect(say(orderBy(asOf))).toBe('order today, the parts take 4 days');
    expect(say(orderBy('2026-06-18'), { leadDays: 1 })).toBe(
      'order by Thu 18 June, the parts take 1 day',
    );
    expect(say(orderBy('2026-06-10', false), { feasible: false })).toBe(
      'too late to order for it: the parts take 4 days',
    );
    expect(say(orderBy(asOf), { leadDays: 0 })).toBeNull();
    expect(say(null)).toBeNull();
  });

  test('workParts() says what is on its way, and that it comes too late for the event', () => {
    const order = { on: '2026-06-12', expected: '2026-06-19' };
    expect(say({ kind: 'ordered', order, late: false })).toBe(
      'parts ordered 12 June, expected 19 June',
    );
    expect(say({ kind: 'ordered', order, late: false }, { latest: '2026-06-18' })).toBe(
      'parts ordered 12 June, expected 19 June, too late for it',
    );
    const here = { on: '2026-06-12', arrived: '2026-06-14' };
    expect(say({ kind: 'onTheShelf', order: here })).toBe('parts are on the shelf');
  });
});
