import { isNull } from 'drizzle-orm';
import { connect } from './connect.ts';
import { setup } from './schema.ts';

/**
 * Puts the hash of a new setup token in place of the one before. Says whether it did: once an owner
 * exists, no token is taken any more.
 */
export async function offerSetupToken(ownerUrl: string, tokenHash: Uint8Array): Promise<boolean> {
  const db = connect(ownerUrl, { max: 1, name: 'quartermark launcher' });
  try {
    const changed = await db.orm
      .update(setup)
      .set({ tokenHash })
      .where(isNull(setup.ownerAt))
      .returning({ id: setup.id });
    return changed.length > 0;
  } finally {
    await db.close();
  }
}
