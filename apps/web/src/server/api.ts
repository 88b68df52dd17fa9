import { type Api, createApi } from '@quartermark/api/server';
import { env, isTestBuild } from '../env.ts';
import { makeClock } from './clock.ts';
import { consoleLog } from './console-log.ts';
import { pauseAt } from './pause-at.ts';

// Pages, routes and the stop hook are bundled apart; they meet on this member of the process.
const place = globalThis as typeof globalThis & { quartermarkApi?: Api };

/** The api of this process, made at first use: a build reads these modules without any setting. */
export function api(): Api {
  place.quartermarkApi ??= makeApi();
  return place.quartermarkApi;
}

function makeApi(): Api {
  const {
    DATABASE_APP_URL,
    QUARTERMARK_SECRET,
    QUARTERMARK_TODAY,
    QUARTERMARK_PAUSE_AT,
    PORT,
    origin,
  } = env();
  return createApi({
    databaseAppUrl: DATABASE_APP_URL,
    secret: QUARTERMARK_SECRET,
    origin,
    port: PORT,
    clock: makeClock(isTestBuild ? (QUARTERMARK_TODAY ?? null) : null),
    testBuild: isTestBuild,
    log: consoleLog,
    ...(isTestBuild && QUARTERMARK_PAUSE_AT ? { reached: pauseAt(QUARTERMARK_PAUSE_AT) } : {}),
  });
}
