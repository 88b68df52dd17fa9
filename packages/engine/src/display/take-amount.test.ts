import { expect, test } from 'vitest';
import { fuelUnit, mostAmount, roughAmount } from './take-amount.ts';

test('roughAmount() says less than a step for what is less than half of one', () => {
  expect(roughAmount(0.04, 'l', 0.1)).toBe('less than 0.1 L');
  expect(roughAmount(0.06, 'l', 0.1)).toBe('0.1 L');
  expect(roughAmount(1.9, 'usGal', 1)).toBe('1 US gal');
});

test('mostAmount() rounds up, but by no step that a division alone would make', () => {
  expect(mostAmount(2.03, 'l', 0.1)).toBe('2.1 L');
  expect(mostAmount(0.1 + 0.2, 'l', 0.1)).toBe('0.3 L');
  expect(mostAmount(88.2, 'l', 1)).toBe('89 L');
});

test('fuelUnit() is the gallon that goes with the quart', () => {
  expect((['l', 'usQt', 'impQt'] as const).map(fuelUnit)).toEqual(['l', 'usGal', 'impGal']);
});
