import { itemInput } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import { addedAgain } from './added-again.ts';

const baseline = {
  on: '2026-05-01',
  odometer: { text: '41,000', unit: 'km' },
  historyComplete: true,
};
const fluid = itemInput.parse({
  name: 'Brake fluid',
  limits: [{ measure: 'months', value: 12 }],
  baseline,
});

test('addedAgain() begins at the last service of the removed item, and claims no whole history', () => {
  expect(addedAgain(fluid, '2026-06-03').baseline).toEqual({ on: '2026-06-03' });
});

test('addedAgain() keeps what the item itself said where nothing was recorded since', () => {
  expect(addedAgain(fluid, '2026-05-01')).toEqual(fluid);
  expect(addedAgain(fluid, null)).toEqual(fluid);
});
