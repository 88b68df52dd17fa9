import { expect, test } from 'vitest';
import { ownPath } from './own-path.ts';

test('ownPath() keeps a path of this app with its query', () => {
  expect(ownPath('/g/1/record?car=2')).toBe('/g/1/record?car=2');
});

test.each([
  '//elsewhere.example',
  '/\\elsewhere.example',
  'https://elsewhere.example/',
  'javascript:1',
])('ownPath() does not follow %s', (asked) => {
  expect(ownPath(asked)).toBe('/');
});

test('ownPath() goes to the start where nothing was asked', () => {
  expect(ownPath(undefined)).toBe('/');
  expect(ownPath(['/a', '/b'])).toBe('/');
});
