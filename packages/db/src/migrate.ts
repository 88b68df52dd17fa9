import { fileURLToPath } from 'node:url';
import { drizzle } from 'drizzle-orm/postgres-js';
import { migrate as applyMigrations } from 'drizzle-orm/postgres-js/migrator';
import postgres from 'postgres';
import { ensureRoles, type RolePasswords } from './roles.ts';

export { grantQueueSchema } from './grant-queue-schema.ts';

export type MigrateOptions = RolePasswords & {
  /** a login that owns the database and may create roles */
  ownerUrl: string;
};

const LOCK = 7_301_182_644;
const OLDEST_SERVER = 150_000;

/**
 * Brings a database to the present tables: makes the roles, then applies each migration not yet
 * applied. Safe to run from several processes at once: one works, the others wait and find it done.
 */
export async function migrate(options: MigrateOptions): Promise<void> {
  // one connection: the lock belongs to it, and ends with it whatever happens
  const sql = postgres(options.ownerUrl, { max: 1, onnotice: () => {}, fetch_types: false });
  try {
    await refuseOldServer(sql);
    await sql`select pg_advisory_lock(${LOCK})`;
    await ensureRoles(sql, options);
    await applyMigrations(drizzle(sql), { migrationsFolder: migrationsFolder() });
  } finally {
    await sql.end({ timeout: 5 });
  }
}

export const migrationsFolder = () => fileURLToPath(new URL('../migrations', import.meta.url));

async function refuseOldServer(sql: postgres.Sql): Promise<void> {
  const [row] = await sql`select current_setting('server_version_num')::int as version`;
  if (row && row.version >= OLDEST_SERVER) return;
  throw new Error(
    `could not migrate: the server is PostgreSQL ${Math.floor((row?.version ?? 0) / 10_000)}; it should be 15 or later`,
  );
}
