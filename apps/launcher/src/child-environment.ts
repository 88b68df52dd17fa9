import type { LauncherEnv } from './env.ts';
import type { Servers } from './servers.ts';

/** Settings that only the launcher may know: the owner's address opens every garage. */
const KEPT_BACK = ['DATABASE_URL', 'DATABASE_APP_URL', 'DATABASE_JOB_URL', 'REDIS_URL', 'TLS_KEY'];

function inherited(env: LauncherEnv): NodeJS.ProcessEnv {
  const left = Object.entries(env.inherited).filter(([name]) => {
    if (KEPT_BACK.includes(name)) return false;
    return env.testBuild || !['QUARTERMARK_TODAY', 'QUARTERMARK_PAUSE_AT'].includes(name);
  });
  return {
    ...(Object.fromEntries(left) as NodeJS.ProcessEnv),
    NODE_ENV: 'production',
    NEXT_TELEMETRY_DISABLED: '1',
    TEST_BUILD: env.testBuild ? '1' : '',
  };
}

/**
 * What the web app is told; `run` lets the launcher know its own child from another server.
 *
 * @param at where it listens: the address people open, or one behind it where TLS ends in front
 */
export function webEnvironment(
  env: LauncherEnv,
  servers: Servers,
  secret: string,
  run: string,
  at: { host: string; port: number },
): NodeJS.ProcessEnv {
  return {
    ...inherited(env),
    DATABASE_APP_URL: servers.appUrl,
    QUARTERMARK_SECRET: secret,
    QUARTERMARK_ORIGIN: env.origin,
    QUARTERMARK_RUN: run,
    PORT: String(at.port),
    HOST: at.host,
  };
}

export function workerEnvironment(env: LauncherEnv, servers: Servers): NodeJS.ProcessEnv {
  return {
    ...inherited(env),
    DATABASE_JOB_URL: servers.jobUrl,
    QUARTERMARK_ORIGIN: env.origin,
    ...(servers.redisUrl === null ? {} : { REDIS_URL: servers.redisUrl }),
  };
}
