import postgres from 'postgres';

const LOCK = 7_301_182_645;

/**
 * Lets the worker's role use schema `bullmq`. It may create there too: the queue makes a sequence per
 * queue when it is first used.
 *
 * @param ownerUrl a login that owns the schema
 */
export async function grantQueueSchema(ownerUrl: string): Promise<void> {
  const sql = postgres(ownerUrl, { max: 1, onnotice: () => {}, fetch_types: false });
  try {
    await sql.begin(async (tx) => {
      // two at once would end in "tuple concurrently updated"
      await tx`select pg_advisory_xact_lock(${LOCK})`;
      await tx`grant usage, create on schema bullmq to job`;
      await tx`grant all on all tables in schema bullmq to job`;
      await tx`grant all on all sequences in schema bullmq to job`;
    });
  } finally {
    await sql.end({ timeout: 5 });
  }
}
