import { sql } from 'drizzle-orm';
import type { Db, Tx } from '../connect.ts';
import { setup } from '../schema.ts';

export type SetupRow = { tokenHash: Uint8Array | null; ownerAt: Date | null };

/** Advisory lock under which the owner is made or the demo opened: one at a time, in the whole house. */
const SETUP_LOCK = 7_072;

export function withSetupLock<T>(db: Db, fn: (tx: Tx) => Promise<T>): Promise<T> {
  return db.orm.transaction(async (tx) => {
    await tx.execute(sql`select pg_advisory_xact_lock(${SETUP_LOCK})`);
    return fn(tx);
  });
}

/** The setup token's hash while nobody owns the house, and since when somebody does. */
export async function findSetup(tx: Pick<Tx, 'select'>): Promise<SetupRow> {
  const [row] = await tx.select({ tokenHash: setup.tokenHash, ownerAt: setup.ownerAt }).from(setup);
  return row ?? { tokenHash: null, ownerAt: null };
}

/** The house has an owner from now on; the token is used up. */
export async function useUpToken(tx: Tx, now: Date): Promise<void> {
  await tx.update(setup).set({ tokenHash: null, ownerAt: now });
}
