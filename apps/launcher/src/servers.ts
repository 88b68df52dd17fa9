import type { LauncherEnv } from './env.ts';
import { type Cluster, startCluster } from './postgres/cluster.ts';
import type { Secrets } from './secrets.ts';

export type Servers = {
  ownerUrl: string;
  appUrl: string;
  jobUrl: string;
  redisUrl: string | null;
  /** null: servers of one's own */
  cluster: Cluster | null;
};

export const DATABASE = 'quartermark';

/** The database and queue to use: those the environment names, else the PostgreSQL that came along. */
export async function openServers(
  env: LauncherEnv,
  secrets: Secrets,
  say: (line: string) => void,
): Promise<Servers> {
  const { databaseUrl, redisUrl } = env;
  if (databaseUrl !== null)
    return {
      ownerUrl: databaseUrl,
      appUrl: env.databaseAppUrl ?? asRole(databaseUrl, 'app', secrets.app),
      jobUrl: env.databaseJobUrl ?? asRole(databaseUrl, 'job', secrets.job),
      redisUrl,
      cluster: null,
    };
  const cluster = await startCluster({ folder: env.dataDir, password: secrets.owner, say });
  return {
    ownerUrl: cluster.url(DATABASE),
    appUrl: cluster.url(DATABASE, { name: 'app', password: secrets.app }),
    jobUrl: cluster.url(DATABASE, { name: 'job', password: secrets.job }),
    redisUrl,
    cluster,
  };
}

function asRole(url: string, role: string, password: string): string {
  const changed = new URL(url);
  changed.username = role;
  changed.password = password;
  return changed.href;
}

/** The password a database URL carries, so that a role named by hand is made with it. */
export function passwordIn(url: string): string {
  return decodeURIComponent(new URL(url).password);
}
