import { proposeItems } from '@quartermark/engine/library';
import { type CarProfile, carProfile, USE_CLASSES } from '@quartermark/engine/log';
import { expect, test } from 'vitest';
import { GROUP_WORDS, GROUPS, groupOf, isGrouped } from './groups.ts';

const PROFILES: readonly CarProfile[] = [
  {},
  { drive: 'electric', airSuspension: true },
  { drive: 'hybrid', fuel: 'diesel', discMaterial: 'carbonCeramic', wheelFixing: 'centreLock' },
  { drive: 'combustion', fuel: 'petrol', sump: 'dry', induction: 'forced', gearbox: 'manual' },
  { drive: 'combustion', fuel: 'petrol', sump: 'wet', induction: 'natural', gearbox: 'automatic' },
].map((profile) => carProfile.parse(profile));

test('groupOf() gives every proposal of the library a place of its own choosing', () => {
  const keys = PROFILES.flatMap((profile) =>
    [[], USE_CLASSES].flatMap((uses) => proposeItems(profile, 'km', uses).map(({ key }) => key)),
  );
  expect(keys.length).toBeGreaterThan(100);
  expect([...new Set(keys)].filter((key) => !isGrouped(key))).toEqual([]);
});

test('groupOf() puts what is not known with the rest', () => {
  expect(groupOf({ key: 'engineOil' })).toBe('oil');
  expect(groupOf({ key: 'somethingNew' })).toBe('rest');
  expect(GROUPS.map((group) => GROUP_WORDS[group])).not.toContain(undefined);
});
