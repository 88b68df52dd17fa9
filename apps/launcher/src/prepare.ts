import { readEnv } from './env.ts';
import { migrateAll } from './migrate.ts';
import { freshSetupToken } from './setup-token.ts';

/**
 * For an installation whose parts are started apart: brings the database to the present tables, makes
 * the roles with the passwords their addresses carry, and prints the setup token while there is no owner.
 */
export async function prepare(): Promise<void> {
  try {
    const { databaseUrl, databaseAppUrl, databaseJobUrl, redisUrl, origin } = readEnv(process.env);
    if (databaseUrl === null || databaseAppUrl === null || databaseJobUrl === null)
      throw new Error(
        'DATABASE_URL, DATABASE_APP_URL and DATABASE_JOB_URL are all needed: the addresses of one database for its owner, app and job.',
      );
    await migrateAll({
      ownerUrl: databaseUrl,
      appUrl: databaseAppUrl,
      jobUrl: databaseJobUrl,
      redisUrl,
      cluster: null,
    });
    console.log('The database is up to date.');
    const token = await freshSetupToken(databaseUrl);
    if (token !== null)
      console.log(`Nobody owns this installation yet: ${origin}/start?token=${token}`);
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  }
}
