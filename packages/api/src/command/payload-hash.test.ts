import { expect, test } from 'vitest';
import { payloadHash } from './payload-hash.ts';

const input = {
  garageId: 'g',
  commandId: 'c',
  entry: { a: 1, b: 2 },
  confirmed: [],
  queued: false,
};

test('payloadHash() is the same whatever the order of the members', () => {
  expect(payloadHash('v', { ...input, entry: { b: 2, a: 1 } })).toBe(payloadHash('v', input));
});

test('payloadHash() passes over answers and the way a command came', () => {
  const later = { ...input, confirmed: ['orderUnclear'], queued: true };
  expect(payloadHash('v', later)).toBe(payloadHash('v', input));
});

test('payloadHash() differs for another payload and for another verb', () => {
  expect(payloadHash('v', { ...input, entry: { a: 1, b: 3 } })).not.toBe(payloadHash('v', input));
  expect(payloadHash('w', input)).not.toBe(payloadHash('v', input));
});
