import { migrate } from '@quartermark/db/migrate';
import { migrateQueue } from '@quartermark/jobs/migrate';
import postgres from 'postgres';
import type { Cluster } from '../../apps/launcher/src/postgres/cluster.ts';

const PASSWORDS = { appPassword: 'app-only-for-the-bench', jobPassword: 'job-only-for-the-bench' };

/** Addresses of a database, by role. */
export type Urls = { ownerUrl: string; appUrl: string; jobUrl: string };

/** A migrated database of this name on the bench's own server. */
export async function makeDatabase(cluster: Cluster, name: string): Promise<Urls> {
  const sql = postgres(cluster.url('postgres'), { max: 1, onnotice: () => {} });
  await sql`create database ${sql(name)}`;
  await sql.end();
  const ownerUrl = cluster.url(name);
  await migrate({ ownerUrl, ...PASSWORDS });
  await migrateQueue({ ownerUrl });
  return {
    ownerUrl,
    appUrl: cluster.url(name, { name: 'app', password: PASSWORDS.appPassword }),
    jobUrl: cluster.url(name, { name: 'job', password: PASSWORDS.jobPassword }),
  };
}
