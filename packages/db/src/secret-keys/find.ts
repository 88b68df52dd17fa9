import { and, eq } from 'drizzle-orm';
import type { Db } from '../connect.ts';
import { secretKey } from '../letter-schema.ts';
import { hashSecret, SECRET_FORM } from './secret.ts';

export type SecretKeyRow = typeof secretKey.$inferSelect;

/** What the secret of an address opens; null: nothing. The secret itself is looked up nowhere, only its hash. */
export async function findSecretKey(
  db: Db,
  kind: SecretKeyRow['kind'],
  secret: string,
): Promise<SecretKeyRow | null> {
  if (!SECRET_FORM.test(secret)) return null;
  const [found] = await db.orm
    .select()
    .from(secretKey)
    .where(and(eq(secretKey.hash, hashSecret(secret)), eq(secretKey.kind, kind)));
  return found ?? null;
}
