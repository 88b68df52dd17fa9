import { expect, test } from 'vitest';
import { makeId } from './make-id.ts';

// RFC 9562, appendix A.6: the published example of a version 7 UUID
test('makeId() gives the UUID of the published example', () => {
  const random = Uint8Array.from([
    0, 0, 0, 0, 0, 0, 0x7c, 0xc3, 0x98, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f,
  ]);
  expect(makeId(0x017f22e279b0, random)).toBe('017f22e2-79b0-7cc3-98c4-dc0c0c07398f');
});

test('makeId() sorts by time', () => {
  const high = new Uint8Array(16).fill(255);
  const low = new Uint8Array(16).fill(0);
  expect(makeId(1_800_000_000_000, high) < makeId(1_800_000_000_001, low)).toBe(true);
});

test('makeId() leaves the bytes it was given alone', () => {
  const random = new Uint8Array(16).fill(7);
  makeId(1_800_000_000_000, random);
  expect(random).toEqual(new Uint8Array(16).fill(7));
});
