import { expect, test } from 'vitest';
import { emptyPlan, planFields, readPlan } from './plan-fields.ts';

test('readPlan() gives back what planFields() was made of', () => {
  const winter = { start: '2026-11-01', end: '2027-03-25' };
  expect(readPlan(planFields(winter, 'c', 2))).toEqual({ carId: 'c', layUp: winter });
  const open = { start: '2026-11-01' };
  expect(readPlan(planFields(open, 'c', 2))).toEqual({ carId: 'c', layUp: open });
});

test('readPlan() says what is missing or out of order, by its field', () => {
  expect(readPlan(emptyPlan(''))).toEqual({
    problems: {
      carId: 'Choose the car.',
      'layUp.start': 'Choose the first day of the lay-up.',
    },
  });
  const turned = { ...emptyPlan('c'), start: '2026-11-01', end: '2026-10-01' };
  expect(readPlan(turned)).toHaveProperty(['problems', 'layUp.end']);
});
