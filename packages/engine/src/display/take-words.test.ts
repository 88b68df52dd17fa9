import { expect, test } from 'vitest';
import { fuelTaken, oilTaken, takenTogether } from './take-words.ts';

const oil = { likelyL: 0.6, cautiousL: 0.9, measured: true, grade: '10W-60', approval: null };
const fuel = { likelyL: 120, cautiousL: 150, octane: 98 };
const NEVER = { likelyL: null, cautiousL: null };

test('oilTaken() says what is likely and what is seldom exceeded, in the units of the bottles', () => {
  expect(oilTaken(oil, 'l')).toBe('10W-60: likely 0.6 L, seldom more than 0.9 L');
  expect(oilTaken({ ...oil, approval: 'A3/B4', cautiousL: 0.6 }, 'l')).toBe(
    '10W-60, A3/B4: likely 0.6 L',
  );
  expect(oilTaken({ ...oil, likelyL: 0.946352946, cautiousL: null }, 'usQt')).toBe(
    '10W-60: likely 1 US qt',
  );
});

test('oilTaken() shows no number where the use was never measured on the car', () => {
  expect(oilTaken({ ...oil, measured: false, grade: null }, 'l')).toBe(
    'oil, grade not on record: how much it uses there was never measured',
  );
  // measured, but nobody said what it does there
  expect(oilTaken({ ...oil, ...NEVER }, 'l')).toBe('10W-60: nobody can say how much');
});

test('fuelTaken() says the octane where it is on record', () => {
  expect(fuelTaken(fuel, 'l')).toBe('fuel of 98 octane: likely 120 L, seldom more than 150 L');
  expect(fuelTaken({ ...NEVER, octane: null }, 'l')).toBe('fuel: nobody can say how much');
});

test('oilTaken() and fuelTaken() round what is seldom exceeded up, and fuel to whole gallons', () => {
  expect(oilTaken({ ...oil, cautiousL: 0.91 }, 'l')).toMatch(/seldom more than 1 L$/);
  expect(fuelTaken(fuel, 'usQt')).toMatch(/likely 32 US gal, seldom more than 40 US gal$/);
});

test('takenTogether() sums what may be mixed, and names whom it cannot count', () => {
  const cars = [
    { name: 'Ardvane', oil, fuel },
    { name: 'Corrit', oil: { ...oil, cautiousL: 0.5 }, fuel: { ...NEVER, octane: 98 } },
    { name: 'Duskar', oil: { ...oil, grade: '0W-40' }, fuel: { ...fuel, octane: 95 } },
    { name: 'Pim', oil: { ...oil, grade: '5W-30', measured: false }, fuel },
  ];
  expect(takenTogether(cars, 'l')).toEqual([
    '10W-60: 1.4 L',
    '0W-40: 0.9 L',
    '5W-30: not known for Pim',
    'fuel of 98 octane: 300 L, not known for Corrit',
    'fuel of 95 octane: 150 L',
  ]);
  expect(takenTogether(cars.slice(0, 1), 'usQt')[1]).toBe('fuel of 98 octane: 40 US gal');
});
