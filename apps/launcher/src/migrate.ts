import { ensureDatabase } from '@quartermark/db/ensure-database';
import { migrate } from '@quartermark/db/migrate';
import { migrateQueue } from '@quartermark/jobs/migrate';
import { DATABASE, passwordIn, type Servers } from './servers.ts';

/** Brings the database to the present tables and the queue to its own, whoever else starts meanwhile. */
export async function migrateAll(servers: Servers): Promise<void> {
  try {
    if (servers.cluster !== null) await ensureDatabase(servers.cluster.url('postgres'), DATABASE);
    await migrate({
      ownerUrl: servers.ownerUrl,
      appPassword: passwordIn(servers.appUrl),
      jobPassword: passwordIn(servers.jobUrl),
    });
    await migrateQueue({ ownerUrl: servers.ownerUrl });
  } catch (error) {
    throw new Error(explain(error as NodeJS.ErrnoException, servers), { cause: error });
  }
}

const UNREACHABLE = ['ECONNREFUSED', 'ENOTFOUND', 'ETIMEDOUT', 'EHOSTUNREACH', 'CONNECT_TIMEOUT'];
/** invalid_password and invalid_authorization_specification, PostgreSQL Appendix A */
const NOT_LET_IN = ['28P01', '28000'];
/** insufficient_privilege, PostgreSQL Appendix A */
const NOT_ALLOWED = '42501';

function explain(error: NodeJS.ErrnoException, servers: Servers): string {
  const { hostname, port, pathname, username } = new URL(servers.ownerUrl);
  const where = `the database ${pathname.slice(1)} at ${hostname}:${port || 5432}`;
  const code = error.code ?? '';
  if (UNREACHABLE.includes(code))
    return `Cannot reach ${where} (${code}). Is the server running, and is DATABASE_URL right?`;
  if (NOT_LET_IN.includes(code))
    return `${where} does not let ${username} in. Check user and password in DATABASE_URL.`;
  if (code === NOT_ALLOWED)
    return `${username} may not prepare ${where}: ${error.message}. DATABASE_URL needs a login that owns the database and may create roles.`;
  return `Preparing ${where} failed: ${error.message}`;
}
