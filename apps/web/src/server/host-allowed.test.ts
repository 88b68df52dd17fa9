import { expect, test } from 'vitest';
import { hostAllowed } from './host-allowed.ts';

test.each([
  ['127.0.0.1:3000', null, true],
  ['localhost:3000', null, true],
  ['[::1]:3000', null, true],
  ['garage.example', null, false],
  ['garage.example', 'garage.example', true],
  ['garage.example:8443', 'garage.example', true],
  ['127.0.0.1.evil.example', null, false],
  ['evil.example', 'garage.example', false],
  ['user@127.0.0.1', null, true],
  ['', null, false],
  [null, null, false],
])('hostAllowed() judges %s beside %s', (host, ours, allowed) => {
  expect(hostAllowed(host, ours)).toBe(allowed);
});
