import { describe, expect, it } from 'vitest';
import { circuitDay, readyCar } from '../../test/ready-car.ts';
import { SITUATIONS } from '../../test/ready-situations.ts';
import { carReadiness } from './assess.ts';
import type { Need } from './result.ts';
import { usualRequirements } from './usual-requirements.ts';

const needOf = (needs: readonly Need[], id: string) => needs.find((need) => need.id === id);
const open = (needs: readonly Need[]) =>
  needs.flatMap(({ status, weight, id }) => (status === 'met' || weight === 'advice' ? [] : [id]));
const atCircuit = (car: ReturnType<typeof readyCar>) =>
  carReadiness(car, circuitDay(), usualRequirements('circuit'));
const onTheRoad = (car: ReturnType<typeof readyCar>) =>
  carReadiness(car, null, usualRequirements('road'));

describe('a car of which nothing is missing', () => {
  it('is ready for the circuit day and for the road, by the log', () => {
    const circuit = atCircuit(readyCar());
    expect(open(circuit.needs)).toEqual([]);
    expect(circuit.verdict).toEqual({ word: 'ready', by: null });
    expect(onTheRoad(readyCar()).verdict).toEqual({ word: 'ready', by: null });
  });
});

describe('one thing missing', () => {
  it.each(SITUATIONS)('%s stops it, or is advice', (_what, car, id, circuit, road) => {
    const atDay = atCircuit(car);
    expect(needOf(atDay.needs, id)).toMatchObject({ weight: 'blocking' });
    expect(open(atDay.needs)).toContain(id);
    expect(atDay.verdict.word).toBe(circuit);
    expect(onTheRoad(car).verdict.word).toBe(road);
    // whatever is missing says why, and what is to be done
    const need = needOf(atDay.needs, id);
    expect(need?.reason).toMatch(/\.$/);
    expect(need?.remedy?.what).toBeTruthy();
  });
});
