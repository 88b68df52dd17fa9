import { expect, test } from 'vitest';
import { levelOf, ZONES, zoneOf } from './zones.ts';

test.each(ZONES.map(({ zone, level }) => [zone, level] as const))(
  'zoneOf() knows the level of "%s" again',
  (zone, level) => {
    expect(zoneOf(level)).toBe(zone);
    expect(levelOf(zone, undefined)).toEqual(level);
  },
);

test('zoneOf() leaves a finer reading as it was read', () => {
  expect(zoneOf({ how: 'fraction', fraction: 0.6 })).toBe('asRead');
  expect(zoneOf({ how: 'fromMax', litres: 0 })).toBe('asRead');
  expect(zoneOf(undefined)).toBe('');
});

test('levelOf() keeps a stored level letter for letter while its mark stays the same', () => {
  const read = { how: 'fraction', fraction: 0.5 } as const;
  expect(levelOf('half', read)).toBe(read);
  expect(levelOf('max', read)).toEqual({ how: 'fraction', fraction: 1, step: 0.25 });
  expect(levelOf('', read)).toBeUndefined();
});
