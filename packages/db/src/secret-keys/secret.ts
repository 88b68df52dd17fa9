import { createHash, randomBytes } from 'node:crypto';

const BYTES = 32;
/** What a secret looks like in an address. */
export const SECRET_FORM = /^[A-Za-z0-9_-]{43}$/;

/** `secret` is shown once and never kept; `hash` is what is stored. */
export type MadeSecret = { secret: string; hash: string };

/**
 * A secret for a link that needs no sign-in: to unsubscribe, or to fetch a calendar. 256 bits of chance,
 * 43 characters that stand in an address as they are.
 */
export function makeSecret(): MadeSecret {
  const secret = randomBytes(BYTES).toString('base64url');
  return { secret, hash: hashSecret(secret) };
}

/** SHA-256, 64 hex digits. No salt and no slow hash: what has 256 bits cannot be guessed from it. */
export const hashSecret = (secret: string): string =>
  createHash('sha256').update(secret, 'utf8').digest('hex');
