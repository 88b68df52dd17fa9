import { createHash, createHmac } from 'node:crypto';
import { expect, test } from 'vitest';
import { scramVerifier } from './roles.ts';

// RFC 7677, section 3: the example exchange for user "user" with password "pencil"
const SALT = Buffer.from('W22ZaJ0SNY7soEsUEjb6gQ==', 'base64');
const NONCE = 'rOprNGfwEbeRWgbNEkqO%hvYDpWUa2RaTCAfuxFIlj)hNlF$k0';
const AUTH_MESSAGE = [
  'n=user,r=rOprNGfwEbeRWgbNEkqO',
  `r=${NONCE},s=W22ZaJ0SNY7soEsUEjb6gQ==,i=4096`,
  `c=biws,r=${NONCE}`,
].join(',');
const CLIENT_PROOF = Buffer.from('dHzbZapWIk4jUhN+Ute9ytag9zjfMHgsqmmiz7AndVQ=', 'base64');
const SERVER_SIGNATURE = '6rriTRBi23WpRR/wtup+mMhUZUn/dB5nLTJRsjl95G4=';

test('scramVerifier() holds the keys of the published example', () => {
  const [, storedKey = '', serverKey = ''] =
    /^SCRAM-SHA-256\$4096:W22ZaJ0SNY7soEsUEjb6gQ==\$([^:]+):(.+)$/.exec(
      scramVerifier('pencil', SALT),
    ) ?? [];
  const signed = (key: string) =>
    createHmac('sha256', Buffer.from(key, 'base64')).update(AUTH_MESSAGE).digest();
  expect(signed(serverKey).toString('base64')).toBe(SERVER_SIGNATURE);
  // the client's proof gives back a key whose hash is the stored one
  const clientKey = signed(storedKey).map((byte, at) => byte ^ (CLIENT_PROOF[at] ?? 0));
  expect(createHash('sha256').update(clientKey).digest('base64')).toBe(storedKey);
});

test('scramVerifier() refuses what would need preparation first', () => {
  expect(() => scramVerifier('pass·word')).toThrow(RangeError);
  expect(() => scramVerifier('')).toThrow(RangeError);
});

test('scramVerifier() salts each verifier anew', () => {
  expect(scramVerifier('pencil')).not.toBe(scramVerifier('pencil'));
});
