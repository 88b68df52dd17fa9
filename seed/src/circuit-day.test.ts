import { eventInput } from '@quartermark/engine/log';
import { carReadiness, usualRequirements, workList } from '@quartermark/engine/readiness';
import { describe, expect, test } from 'vitest';
import { askedOf } from './asked-of.ts';
import { demoGarage } from './demo-garage.ts';

function circuitDay(day: string) {
  const garage = demoGarage(day);
  const [coming] = garage.events
    .map(({ id, event }) => ({ id, event: eventInput.parse(event) }))
    .filter(({ event }) => event.sort === 'circuit' && event.start > day);
  if (coming === undefined) throw new RangeError('no circuit day is to come');
  const asks = coming.event.requirements ?? usualRequirements('circuit');
  return coming.event.cars.map((id) => {
    const car = garage.cars.find((one) => one.id === id);
    if (car === undefined) throw new RangeError(`no car has the id ${id}`);
    return { car, readiness: carReadiness(askedOf(garage, car, coming.event, day), coming, asks) };
  });
}

describe.each(['2026-01-01', '2026-06-15', '2028-02-29'])('the circuit day seen on %s', (day) => {
  const cars = circuitDay(day);

  test('demoGarage() has a car for each verdict', () => {
    const words = cars.map(({ car, readiness }) => `${car.car.name}: ${readiness.verdict.word}`);
    expect(words.toSorted()).toEqual([
      'Ardvane Corrit: notOnRecord',
      'Ardvane Thessel: notInTime',
      'Tovrik Pim: canBeReady',
      'Velmora Quist: ready',
    ]);
  });

  test('demoGarage() has one set of pads that must be ordered today', () => {
    const lines = workList(cars.map(({ readiness }) => readiness));
    const today = lines.filter(
      ({ parts }) => parts?.kind === 'orderBy' && parts.day === day && parts.feasible,
    );
    expect(today.map(({ what }) => what)).toEqual(['Renew Front pads of the hatch']);
  });
});

test('demoGarage() has an event that is over and of which nothing is on record', () => {
  const day = '2026-06-15';
  const garage = demoGarage(day);
  const open = garage.cars.flatMap((car) =>
    garage.events.flatMap(({ event }) => {
      const { past } = askedOf(garage, car, eventInput.parse(event), day);
      return past.filter(({ onRecord }) => !onRecord).map(({ name }) => `${car.car.name}: ${name}`);
    }),
  );
  expect([...new Set(open)]).toEqual(['Pellorin Duskar: Drag-strip evening']);
});
