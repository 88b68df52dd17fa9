import { grantQueueSchema } from '@quartermark/db/migrate';
import { migrateQueueSchema } from './worker/queue.ts';

/**
 * Makes or updates the queue's own schema, `bullmq`, and lets the worker's role use it. Run after the
 * migrations of `@quartermark/db`, which make that role; safe to run from several processes at once. The
 * worker itself only checks that the schema is there.
 *
 * @param options.ownerUrl a login that may create schemas in the database
 */
export async function migrateQueue(options: { ownerUrl: string }): Promise<void> {
  await migrateQueueSchema(options.ownerUrl);
  await grantQueueSchema(options.ownerUrl);
}
