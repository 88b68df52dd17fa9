import { expect, test } from 'vitest';
import type { Limit } from '../log/item.ts';
import { trackDays, trackDaysByMeasure } from './track-days.ts';

const circuit = (weight: number) => ({ circuit: weight });
const limits: Limit[] = [
  { measure: 'km', value: 1100, unit: 'km' },
  { measure: 'km', value: 1100, unit: 'km', weights: circuit(10) },
  { measure: 'hours', value: 8 },
  { measure: 'sessions', value: 10, weights: circuit(0.5) },
  { measure: 'sessions', value: 10, weights: circuit(0) },
  { measure: 'launches', value: 3 },
  { measure: 'months', value: 1 },
];

test('trackDaysByMeasure() divides by what a day of circuit counts', () => {
  expect(trackDaysByMeasure({ limits })).toEqual([
    { measure: 'km', days: 5 },
    { measure: 'km', days: 0.5 },
    { measure: 'hours', days: 4 },
    { measure: 'sessions', days: 4 },
  ]);
});

test('trackDaysByMeasure() reads miles as miles', () => {
  const [days] = trackDaysByMeasure({ limits: [{ measure: 'km', value: 100, unit: 'mi' }] });
  expect(days?.days).toBeCloseTo(160.9344 / 220, 12);
});

test('trackDays() is that of the limit that runs out first, hard use included where circuits count', () => {
  const severe = (classes: ('circuit' | 'strip')[]) => ({
    classes,
    share: 0.1,
    limits: [{ measure: 'sessions' as const, value: 5 }],
  });
  const usual: Limit[] = [{ measure: 'hours', value: 8 }];
  expect(trackDays({ limits: usual })).toBe(4);
  expect(trackDays({ limits: usual, severe: severe(['circuit']) })).toBe(1);
  expect(trackDays({ limits: usual, severe: severe(['strip']) })).toBe(4);
  expect(trackDays({ limits: [{ measure: 'months', value: 1 }] })).toBeNull();
});
