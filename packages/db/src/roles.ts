import { createHash, createHmac, pbkdf2Sync, randomBytes } from 'node:crypto';
import { setTimeout as wait } from 'node:timers/promises';
import postgres from 'postgres';

export type RolePasswords = { appPassword: string; jobPassword: string };

/**
 * Makes the roles `app` and `job` if they are not there, and gives them these passwords.
 *
 * Roles belong to the whole cluster while advisory locks belong to one database, so two databases
 * migrated at once can meet here. The loser tries again.
 */
export async function ensureRoles(sql: postgres.Sql, passwords: RolePasswords): Promise<void> {
  await ensureRole(sql, 'app', passwords.appPassword);
  await ensureRole(sql, 'job', passwords.jobPassword);
}

async function ensureRole(sql: postgres.Sql, role: 'app' | 'job', password: string) {
  const verifier = scramVerifier(password);
  for (let attempt = 1; ; attempt += 1) {
    try {
      const [found] = await sql`select 1 from pg_roles where rolname = ${role}`;
      const verb = found ? 'alter' : 'create';
      await sql.unsafe(`${verb} role ${role} login noinherit password '${verifier}'`);
      return;
    } catch (error) {
      if (isMissingPrivilege(error)) throw new Error(mendRoles(role), { cause: error });
      if (attempt >= 20 || !isRace(error)) throw error;
      await wait(20 * attempt);
    }
  }
}

const mendRoles = (role: string) =>
  `could not create or change the role "${role}": the login in DATABASE_URL lacks the CREATEROLE right; grant it ("alter role ... createrole") or use a login that has it`;

const codeOf = (error: unknown) => (error instanceof postgres.PostgresError ? error.code : null);
const isMissingPrivilege = (error: unknown) => codeOf(error) === '42501';

/** duplicate_object, unique_violation, or "tuple concurrently updated", which has no code of its own */
function isRace(error: unknown): boolean {
  const code = codeOf(error);
  return code === '42710' || code === '23505' || code === 'XX000';
}

/**
 * What PostgreSQL stores for a password (RFC 5802, RFC 7677: SCRAM-SHA-256), so that the password
 * itself never stands in a statement and so in no server log.
 *
 * @throws RangeError for anything but printable ASCII, which would need RFC 4013 first
 */
export function scramVerifier(password: string, salt: Uint8Array = randomBytes(16)): string {
  if (!/^[\x20-\x7e]+$/.test(password))
    throw new RangeError(
      'could not use a role password: it should be printable ASCII, and not empty',
    );
  const iterations = 4096;
  const salted = pbkdf2Sync(password, salt, iterations, 32, 'sha256');
  const keyed = (text: string) => createHmac('sha256', salted).update(text).digest();
  const stored = createHash('sha256').update(keyed('Client Key')).digest('base64');
  const server = keyed('Server Key').toString('base64');
  return `SCRAM-SHA-256$${iterations}:${Buffer.from(salt).toString('base64')}$${stored}:${server}`;
}
