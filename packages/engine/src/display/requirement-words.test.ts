import { expect, test } from 'vitest';
import { WEIGHED_NEEDS } from '../log/requirements.ts';
import { REQUIREMENT_GROUPS, REQUIREMENT_WORDS } from './requirement-words.ts';

test('REQUIREMENT_GROUPS holds each need once', () => {
  const grouped = REQUIREMENT_GROUPS.flatMap(({ needs }) => needs);
  expect(grouped.toSorted()).toEqual(WEIGHED_NEEDS.toSorted());
});

test('REQUIREMENT_WORDS gives each need a name of its own', () => {
  const names = Object.values(REQUIREMENT_WORDS).map(({ name }) => name);
  expect(new Set(names).size).toBe(WEIGHED_NEEDS.length);
});
