import { createHash, randomBytes } from 'node:crypto';
import { offerSetupToken } from '@quartermark/db/setup-token';

/**
 * While nobody owns this installation, whoever holds the token may make the owner's account or open the
 * demo. A fresh one at each start; the database keeps only its hash. Null: an owner exists.
 */
export async function freshSetupToken(ownerUrl: string): Promise<string | null> {
  const token = randomBytes(24).toString('base64url');
  const hash = createHash('sha256').update(token, 'utf8').digest();
  return (await offerSetupToken(ownerUrl, hash)) ? token : null;
}
