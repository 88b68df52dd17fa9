import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { hashSecret, isSecret, makeSecret } from './secret.ts';

test('makeSecret() gives 256 bits that stand in an address as they are, and no two alike', () => {
  const made = Array.from({ length: 100 }, () => makeSecret());
  for (const { secret, hash } of made) {
    expect(encodeURIComponent(secret)).toBe(secret);
    expect(Buffer.from(secret, 'base64url')).toHaveLength(32);
    expect(hash).toBe(createHash('sha256').update(secret).digest('hex'));
  }
  expect(new Set(made.map(({ secret }) => secret)).size).toBe(100);
});

test('isSecret() knows the one secret of a hash', () => {
  const { secret, hash } = makeSecret();
  expect(isSecret(secret, hash)).toBe(true);
  expect(isSecret(makeSecret().secret, hash)).toBe(false);
  expect(isSecret(hash, hash)).toBe(false);
});

test('isSecret() is false of what has another form, whatever was stored', () => {
  const { secret, hash } = makeSecret();
  for (const given of ['', secret.slice(1), `${secret}=`, `${secret}\n`, 'é'.repeat(43)])
    expect(isSecret(given, hashSecret(given))).toBe(false);
  for (const kept of ['', 'zz', hash.slice(2)]) expect(isSecret(secret, kept)).toBe(false);
});
