import postgres from 'postgres';

const DUPLICATE_DATABASE = '42P04';

/** Makes a database on a new server; a no-op where it exists. `serverUrl` names any other database. */
export async function ensureDatabase(serverUrl: string, name: string): Promise<void> {
  const sql = postgres(serverUrl, { max: 1, onnotice: () => {}, fetch_types: false });
  try {
    const found = await sql`select 1 from pg_database where datname = ${name}`;
    if (found.length === 0) await sql`create database ${sql(name)}`;
  } catch (error) {
    // another start made it in between
    if ((error as { code?: string }).code !== DUPLICATE_DATABASE) throw error;
  } finally {
    await sql.end({ timeout: 5 });
  }
}
