import { expect, test } from 'vitest';
import { aboutWhat, pageOf } from './about-what.ts';
import { COMMON, of } from './sample-entries.ts';

const { car: _, ...noCar } = COMMON;

test('aboutWhat() takes the car first, then what the entry names beside it, then nothing', () => {
  expect(aboutWhat(of({ kind: 'fit', component: 'g-1', change: 'on' }))).toEqual({ carId: 'c-1' });
  const off = { ...of({ kind: 'fit', component: 'g-1', change: 'off' }), car: undefined };
  expect(aboutWhat(off as never)).toEqual({ gearId: 'g-1' });
  const note = { kind: 'note', note: 'x', ...noCar } as const;
  expect(aboutWhat({ ...note, gear: 'g-2' })).toEqual({ gearId: 'g-2' });
  expect(aboutWhat(note)).toBeNull();
});

test('pageOf() leads to the car, the piece or the garage', () => {
  expect(pageOf({ carId: 'c-1' })).toBe('/car/c-1');
  expect(pageOf({ gearId: 'g-1' })).toBe('/gear/g-1');
  expect(pageOf(null)).toBe('');
});
