import { expect, test } from 'vitest';
import { sameOrigin } from './same-origin.ts';

test.each([
  ['http://127.0.0.1:3000', '127.0.0.1:3000', true],
  ['https://garage.example', 'garage.example', true],
  [null, '127.0.0.1:3000', true],
  ['http://elsewhere.example', '127.0.0.1:3000', false],
  ['http://127.0.0.1:8080', '127.0.0.1:3000', false],
  // a page out of a sandboxed frame or a file
  ['null', '127.0.0.1:3000', false],
  ['http://127.0.0.1:3000', null, false],
])('sameOrigin(%s, %s) is %s', (origin, host, same) => {
  expect(sameOrigin(origin, host)).toBe(same);
});
