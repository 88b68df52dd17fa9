import { expect, test } from 'vitest';
import { oncePerCar } from './relay.ts';

test('oncePerCar() makes one job of the rows of a car, and keeps garages apart', () => {
  const row = (garageId: string, carId: string) => ({ garageId, carId, id: 1, inputVersion: 2 });
  const jobs = oncePerCar([row('g', 'a'), row('g', 'b'), row('g', 'a'), row('h', 'a')]);
  expect(jobs).toEqual([
    { garageId: 'g', carId: 'a' },
    { garageId: 'g', carId: 'b' },
    { garageId: 'h', carId: 'a' },
  ]);
});
