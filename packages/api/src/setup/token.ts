import { createHash, timingSafeEqual } from 'node:crypto';
import { refuse } from '../refused.ts';

export function hashToken(token: string): Uint8Array {
  return createHash('sha256').update(token, 'utf8').digest();
}

/**
 * Lets the holder of the setup token pass. Both sides are hashes of one length, so the comparison takes
 * the same time whatever was sent.
 *
 * @throws Refused `setupToken`
 */
export function checkToken(
  token: string,
  setup: { tokenHash: Uint8Array | null; ownerAt: Date | null },
): void {
  if (setup.ownerAt)
    throw refuse(
      'setupToken',
      'token',
      'This house already has an owner, so the setup token is used up; sign in instead.',
    );
  const known = setup.tokenHash;
  if (known && known.length === 32 && timingSafeEqual(hashToken(token), known)) return;
  throw refuse(
    'setupToken',
    'token',
    'This setup token is not valid. A new one is printed each time the server starts; take the newest.',
  );
}
