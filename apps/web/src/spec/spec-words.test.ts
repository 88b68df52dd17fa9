import { carInput, type SpecSheet } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import { profileLines, specAnswer, specVersion } from './spec-words.ts';

const line = (source?: string): SpecSheet['lines'][number] => ({
  group: 'torques',
  what: 'Wheel bolts',
  value: '120 N·m',
  ...(source === undefined ? {} : { source }),
});

test('specAnswer() says how many values have no source', () => {
  expect(specAnswer({ lines: [] })).toBe('Nothing is written on its sheet yet.');
  expect(specAnswer({ lines: [line()] })).toBe('One value, unverified.');
  expect(specAnswer({ lines: [line('manual')] })).toBe('One value, each with its source.');
  expect(specAnswer({ lines: [line('manual'), line()] })).toBe('2 values, 1 of them unverified.');
  expect(specAnswer({ lines: [line(), line()] })).toBe('2 values, all of them unverified.');
});

test('profileLines() takes from the car what was said of it, and no more', () => {
  const car = carInput.parse({
    name: 'Tarnfell Corvo',
    unit: 'km',
    profile: { oilCapacityL: 5.5, wheelFixing: 'centreLock', sump: 'dry' },
  });
  expect(profileLines(car).map(({ label }) => label)).toEqual(['Oil at MAX', 'Wheels held by']);
});

test('specVersion() calls a value without a source unverified', () => {
  const words = specVersion({ lines: [line(), line('manual, page 3')] });
  expect(words.find(({ label }) => label === 'Torques')?.words).toBe(
    'Wheel bolts: 120 N·m (unverified); Wheel bolts: 120 N·m (manual, page 3)',
  );
  expect(words.find(({ label }) => label === 'Fluids and capacities')?.words).toBe('Nothing');
});
