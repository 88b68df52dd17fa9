import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { makeSecret } from './secret.ts';

test('makeSecret() gives 256 bits that stand in an address as they are, and no two alike', () => {
  const made = Array.from({ length: 100 }, () => makeSecret());
  for (const { secret, hash } of made) {
    expect(encodeURIComponent(secret)).toBe(secret);
    expect(Buffer.from(secret, 'base64url')).toHaveLength(32);
    expect(hash).toBe(createHash('sha256').update(secret).digest('hex'));
  }
  expect(new Set(made.map(({ secret }) => secret)).size).toBe(100);
});
