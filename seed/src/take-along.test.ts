import { eventInput } from '@quartermark/engine/log';
import { takeAlong } from '@quartermark/engine/readiness';
import { expect, test } from 'vitest';
import { askedOf } from './asked-of.ts';
import { demoGarage } from './demo-garage.ts';

test.each(['2026-01-01', '2026-06-15', '2028-02-29'])(
  'demoGarage() has on %s a circuit car whose fill-ups tell its fuel, and others whose do not',
  (day) => {
    const garage = demoGarage(day);
    const [coming] = garage.events
      .map(({ id, event }) => ({ id, event: eventInput.parse(event) }))
      .filter(({ event }) => event.sort === 'circuit' && event.start > day);
    if (coming === undefined) throw new RangeError('no circuit day is to come');
    const told = garage.cars
      .filter(({ id }) => coming.event.cars.includes(id))
      .map((car) => ({ car, take: takeAlong(askedOf(garage, car, coming.event, day), coming) }));
    const fuel = told.find(({ car }) => car.car.name === 'Ardvane Thessel')?.take.fuel;
    // 5 stints of 33 km/100 L and the way; 11.5 L on 100 km of road
    expect(fuel?.likelyL).toBeGreaterThan(55);
    expect(fuel?.likelyL).toBeLessThan(80);
    expect(fuel?.cautiousL).toBeLessThan(1.15 * (fuel?.likelyL ?? 0));
    expect(told.filter(({ take }) => take.fuel.likelyL === null).length).toBeGreaterThan(0);
    expect(told.every(({ take }) => take.oil.reason !== '')).toBe(true);
  },
);
