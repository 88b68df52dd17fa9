import { sql } from 'drizzle-orm';
import { type GarageNotice, OUTBOX_CHANNEL, SNAPSHOT_CHANNEL } from '../channels.ts';
import type { Tx } from '../connect.ts';

/** Tells everyone who looks on, at commit, that something beside the cars' figures has changed. */
export async function tellGarage(tx: Tx, garageId: string): Promise<void> {
  const notice: GarageNotice = { g: garageId };
  await tx.execute(sql`select pg_notify(${SNAPSHOT_CHANNEL}, ${JSON.stringify(notice)})`);
}

/** Has the worker look for what waits, at commit. */
export async function wakeWorker(tx: Tx): Promise<void> {
  await tx.execute(sql`select pg_notify(${OUTBOX_CHANNEL}, '')`);
}
