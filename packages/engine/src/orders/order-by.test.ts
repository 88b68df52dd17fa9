import { describe, expect, test } from 'vitest';
import { latestWorkDay, leadDaysNow, orderBy } from './order-by.ts';
import { orderStands, standingOrder } from './standing-order.ts';

const coming = { on: '2026-06-03', expected: '2026-06-12' };
const here = { on: '2026-06-03', arrived: '2026-06-10' };

describe('orderStands()', () => {
  test.each([
    [coming, null, true],
    [coming, '2026-06-02', true],
    // done on the day of the order: it was ordered for the next time
    [coming, '2026-06-03', true],
    [coming, '2026-06-04', false],
    // done with other parts, before these came
    [here, '2026-06-09', true],
    [here, '2026-06-10', false],
    [here, '2026-06-20', false],
  ])('orderStands() of %j, last done on %s, is %s', (order, service, stands) => {
    expect(orderStands(order, service)).toBe(stands);
  });
});

describe('standingOrder()', () => {
  test('standingOrder() speaks of the shelf first, then of what is expected first', () => {
    const late = { on: '2026-06-01', expected: '2026-07-01' };
    const never = { on: '2026-06-09' };
    expect(standingOrder([late, coming, never, here], null)).toBe(here);
    expect(standingOrder([never, late, coming], null)).toBe(coming);
    expect(standingOrder([never, { on: '2026-06-11' }], null)).toEqual({ on: '2026-06-11' });
    expect(standingOrder([coming], '2026-06-30')).toBeNull();
  });
});

describe('orderBy()', () => {
  const parts = {
    latestWork: '2026-06-30',
    likely: '2026-07-20',
    leadDays: 12,
    orders: [],
    service: '2026-01-10',
    asOf: '2026-06-15',
  };

  test('orderBy() is the latest work date less the days for the parts, feasible until that day', () => {
    expect(orderBy(parts)).toEqual({ kind: 'orderBy', day: '2026-06-18', feasible: true });
    expect(orderBy({ ...parts, asOf: '2026-06-18' })).toMatchObject({ feasible: true });
    expect(orderBy({ ...parts, asOf: '2026-06-19' })).toMatchObject({ feasible: false });
  });

  test('orderBy() knows no day where no work date is known', () => {
    expect(orderBy({ ...parts, latestWork: null })).toBeNull();
  });

  test('orderBy() is silenced by an order that stands, with or without a work date', () => {
    const said = orderBy({ ...parts, orders: [coming] });
    expect(said).toEqual({ kind: 'ordered', order: coming, late: false });
    const unknown = { ...parts, latestWork: null, likely: null };
    expect(orderBy({ ...unknown, orders: [coming] })).toMatchObject({ kind: 'ordered' });
    expect(orderBy({ ...parts, orders: [here] })).toEqual({ kind: 'onTheShelf', order: here });
    expect(orderBy({ ...parts, orders: [here], service: '2026-06-12' })?.kind).toBe('orderBy');
  });

  test('orderBy() calls late what is expected after the likely day, or not here once that has passed', () => {
    const late = (more: object) => orderBy({ ...parts, orders: [coming], ...more });
    expect(late({ likely: '2026-06-15' })).toMatchObject({ late: false });
    expect(late({ likely: '2026-06-14' })).toMatchObject({ late: true });
    expect(late({ likely: '2026-06-11', asOf: '2026-06-04' })).toMatchObject({ late: true });
    expect(late({ likely: '2026-06-12', asOf: '2026-06-04' })).toMatchObject({ late: false });
    expect(late({ orders: [{ on: '2026-06-03' }], likely: '2026-06-01' })).toMatchObject({
      late: false,
    });
  });
});

test('leadDaysNow() is none while the parts are on the shelf', () => {
  expect(leadDaysNow(12, [], null)).toBe(12);
  expect(leadDaysNow(12, [coming], null)).toBe(12);
  expect(leadDaysNow(12, [here], null)).toBe(0);
  expect(leadDaysNow(12, [here], '2026-06-11')).toBe(12);
});

describe('latestWorkDay()', () => {
  const due = (p10: string | null) => ({ dueDate: { p10, p50: null, p90: null } });
  const fine = { state: 'fine', reasonCode: null } as const;
  const asOf = '2026-06-15';

  test('latestWorkDay() is the earliest likely day, and never a day that has passed', () => {
    expect(latestWorkDay({ ...fine, ...due('2026-07-01') }, asOf)).toBe('2026-07-01');
    expect(latestWorkDay({ ...fine, ...due('2026-05-01') }, asOf)).toBe(asOf);
    expect(latestWorkDay({ ...fine, ...due(null) }, asOf)).toBeNull();
    expect(latestWorkDay(fine, asOf)).toBeNull();
  });

  test('latestWorkDay() is today for what is overdue at once, whatever its limits say', () => {
    const asked = { state: 'overdue', reasonCode: 'trigger' } as const;
    expect(latestWorkDay({ ...asked, ...due('2026-07-01') }, asOf)).toBe(asOf);
  });

  test('latestWorkDay() is none for a one-off that has been done', () => {
    const done = { state: 'fine', reasonCode: 'doneOnce' } as const;
    expect(latestWorkDay({ ...done, ...due('2026-05-15') }, asOf)).toBeNull();
  });
});
