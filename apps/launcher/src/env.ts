import path from 'node:path';
import { projectRoot } from './project-root.ts';

export type LauncherEnv = {
  /** of a PostgreSQL server of one's own; null: the one that comes with the packages */
  databaseUrl: string | null;
  databaseAppUrl: string | null;
  databaseJobUrl: string | null;
  /** null: the queue lives in PostgreSQL */
  redisUrl: string | null;
  port: number;
  host: string;
  origin: string;
  dataDir: string;
  secret: string | null;
  /** certificate and key of one's own; null: plain http */
  tls: { certFile: string; keyFile: string } | null;
  testBuild: boolean;
  /** the environment as it came, for what children inherit */
  inherited: NodeJS.ProcessEnv;
};

/** What the environment asks of the launcher; says which variable is wrong and how to mend it. */
export function readEnv(given: NodeJS.ProcessEnv): LauncherEnv {
  const text = (name: string) => given[name]?.trim() || null;
  const port = Number(text('PORT') ?? 3000);
  if (!Number.isInteger(port) || port < 1 || port > 65_535)
    throw new Error(
      `PORT is ${text('PORT')}: it must be a whole number from 1 to 65535, such as PORT=3001.`,
    );
  const host = text('HOST') ?? '127.0.0.1';
  const secret = text('QUARTERMARK_SECRET');
  if (secret !== null && secret.length < 32)
    throw new Error(
      `QUARTERMARK_SECRET has ${secret.length} characters: it needs at least 32. Without it, one is made and kept.`,
    );
  const tls = tlsFiles(text('TLS_CERT'), text('TLS_KEY'));
  return {
    databaseUrl: postgresUrl('DATABASE_URL', text('DATABASE_URL')),
    databaseAppUrl: postgresUrl('DATABASE_APP_URL', text('DATABASE_APP_URL')),
    databaseJobUrl: postgresUrl('DATABASE_JOB_URL', text('DATABASE_JOB_URL')),
    redisUrl: url('REDIS_URL', text('REDIS_URL'), ['redis:', 'rediss:']),
    port,
    host,
    origin:
      originOf(text('QUARTERMARK_ORIGIN'), tls !== null) ??
      `${tls === null ? 'http' : 'https'}://127.0.0.1:${port}`,
    dataDir: path.resolve(projectRoot, text('DATA_DIR') ?? 'quartermark-data'),
    secret,
    tls,
    testBuild: text('TEST_BUILD') === '1',
    inherited: given,
  };
}

function originOf(given: string | null, tls: boolean): string | null {
  const origin = url('QUARTERMARK_ORIGIN', given, ['http:', 'https:']);
  if (tls && origin?.startsWith('http:'))
    throw new Error(
      `QUARTERMARK_ORIGIN is ${origin}, but with TLS_CERT and TLS_KEY people open https://. Write it so.`,
    );
  return origin;
}

function tlsFiles(cert: string | null, key: string | null): LauncherEnv['tls'] {
  if (cert === null && key === null) return null;
  if (cert !== null && key !== null)
    return { certFile: path.resolve(projectRoot, cert), keyFile: path.resolve(projectRoot, key) };
  const [given, missing] = cert === null ? ['TLS_KEY', 'TLS_CERT'] : ['TLS_CERT', 'TLS_KEY'];
  throw new Error(
    `${given} is set and ${missing} is not: HTTPS needs both, the paths of a certificate and of its key.`,
  );
}

const postgresUrl = (name: string, value: string | null) =>
  url(name, value, ['postgres:', 'postgresql:']);

function url(name: string, value: string | null, protocols: string[]): string | null {
  if (value === null) return null;
  if (URL.canParse(value) && protocols.includes(new URL(value).protocol)) return value;
  // the value may hold a password: it is not repeated
  throw new Error(`${name} cannot be read as an address: it must begin with ${protocols[0]}//.`);
}
