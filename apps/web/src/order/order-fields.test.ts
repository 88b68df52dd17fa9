import { orderInput } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import {
  newOrderFields,
  orderFields,
  orderLines,
  readNewOrder,
  readOrder,
} from './order-fields.ts';

const TODAY = '2026-06-15';

test('readNewOrder() is an order of today, expected after the days the item says its parts take', () => {
  expect(readNewOrder(newOrderFields(TODAY, 12))).toEqual({
    order: { on: TODAY, expected: '2026-06-27' },
  });
  expect(readNewOrder(newOrderFields(TODAY, 0))).toHaveProperty(
    ['order', 'expected'],
    '2026-06-22',
  );
  const unknown = { ...newOrderFields(TODAY, 12), expectedIn: null, what: ' Pads ', from: ' ' };
  expect(readNewOrder(unknown)).toEqual({ order: { on: TODAY, what: ' Pads ' } });
});

test('readOrder() gives back what orderFields() was made of', () => {
  const order = orderInput.parse({
    on: '2026-06-03',
    expected: '2026-06-12',
    arrived: '2026-06-11',
    what: 'Belt',
    from: 'the shop in town',
  });
  expect(readOrder(orderFields(order, 2))).toEqual({ order });
  expect(readOrder(orderFields({ on: '2026-06-03' }, 2))).toEqual({ order: { on: '2026-06-03' } });
  expect(orderLines(order).map(({ words }) => words)).toEqual([
    '3 June 2026',
    '12 June 2026',
    '11 June 2026',
    'Belt',
    'the shop in town',
  ]);
});

test('readOrder() says which day lies before the order, by its field', () => {
  const fields = orderFields({ on: '2026-06-03' }, 1);
  const wrong = (more: object) => readOrder({ ...fields, ...more });
  const sameDay = { on: '2026-06-03', expected: '2026-06-03', arrived: '2026-06-03' };
  expect(wrong(sameDay)).toEqual({ order: sameDay });
  expect(wrong({ on: '' })).toHaveProperty(['problems', 'order.on']);
  expect(wrong({ expected: '2026-06-02' })).toHaveProperty(['problems', 'order.expected']);
  expect(wrong({ arrived: '2026-06-02' })).toHaveProperty(['problems', 'order.arrived']);
});
