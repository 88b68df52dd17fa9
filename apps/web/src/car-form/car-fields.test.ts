import { type CarInput, carInput } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import { type CarFields, carFields, emptyCar, readCar } from './car-fields.ts';

const full: CarInput = carInput.parse({
  name: 'Tarn 200',
  unit: 'mi',
  odoDigits: 6,
  profile: {
    status: 'inPieces',
    sump: 'dry',
    induction: 'forced',
    drive: 'combustion',
    fuel: 'petrol',
    octane: 98,
    gearbox: 'six gears, by hand',
    wheelFixing: 'centreLock',
    discMaterial: 'iron',
    airSuspension: false,
    noiseDb: 98.5,
    liftPoints: 'behind the front wheels, on the seam',
    oilSpanL: 1.2,
    oilCapacityL: 8.5,
    dipstick: { state: 'hotStopped', minutesAfterStop: 5 },
    oilGrade: '5W-40',
    oilApproval: 'as in the manual',
    oilLimitLPer1000Km: 0.8,
  },
});
const bare = carFields(carInput.parse({ name: 'Tern', unit: 'km' }), 1);
const problemsOf = (more: Partial<CarFields>) => {
  const read = readCar({ ...bare, ...more });
  return 'problems' in read ? read.problems : {};
};

test('carFields() and readCar() keep every part of a car, there and back', () => {
  const read = readCar(carFields(full, 4));
  expect('car' in read && carInput.parse(read.car)).toEqual(full);
  expect(carFields(full, 4).baseRevision).toBe(4);
});

test('readCar() leaves out what nobody has said', () => {
  expect(readCar(bare)).toEqual({ car: { name: 'Tern', unit: 'km', profile: {} } });
});

test('readCar() reads a decimal comma and empties what was cleared', () => {
  const read = readCar({ ...carFields(full, 4), oilSpanL: '0,8', octane: ' ', odoDigits: '' });
  const car = 'car' in read ? carInput.parse(read.car) : expect.fail('not read');
  expect(car.profile.oilSpanL).toBe(0.8);
  expect(car.profile).not.toHaveProperty('octane');
  expect(car).not.toHaveProperty('odoDigits');
});

test('readCar() names every field that cannot be read, by the path of the server', () => {
  const problems = problemsOf({ name: ' ', oilSpanL: 'a litre', minutesAfterStop: '5' });
  expect(Object.keys(problems).sort()).toEqual([
    'car.name',
    'car.profile.dipstick.minutesAfterStop',
    'car.profile.oilSpanL',
  ]);
  expect(problems['car.profile.oilSpanL']).toContain('"a litre" is not a number');
});

test('emptyCar() says nothing but the unit, and is asked for a name', () => {
  expect(readCar({ ...emptyCar('mi'), name: 'Tern' })).toEqual({
    car: { name: 'Tern', unit: 'mi', profile: {} },
  });
  expect(readCar(emptyCar('mi'))).toMatchObject({
    problems: { 'car.name': expect.stringContaining('Fill in a name') },
  });
});
