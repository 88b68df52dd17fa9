import { sql } from 'drizzle-orm';
import { OUTBOX_CHANNEL } from '../channels.ts';
import type { Tx } from '../connect.ts';

/** Tells the worker, at the commit, that something is to leave the house now: it need not wait for its minute. */
export async function wakePost(tx: Tx): Promise<void> {
  await tx.execute(sql`select pg_notify(${OUTBOX_CHANNEL}, '')`);
}
