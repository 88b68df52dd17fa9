import { addressPolicyOf, startWorker } from '@quartermark/jobs/worker';
import pino from 'pino';
import { clockOf } from './clock-of.ts';
import { readEnv } from './env.ts';
import { pauseAt } from './pause-at.ts';

const PARENT_CHECK_MS = 1000;
const STOP_MS = 5000;

const parent = process.ppid;
const env = readEnv();
const log = pino({ level: env.LOG_LEVEL, base: { app: 'worker' } });

const worker = startWorker({
  databaseJobUrl: env.DATABASE_JOB_URL,
  redisUrl: env.REDIS_URL,
  origin: env.QUARTERMARK_ORIGIN,
  policy: addressPolicyOf(env.POST_ALLOW_PRIVATE, env.POST_ALLOW_PORTS),
  clock: clockOf(env),
  log,
  ...(__TEST_BUILD__ ? { reached: pauseAt(env) } : {}),
});

let stopping = false;
async function stop(why: string, code: number) {
  if (stopping) return;
  stopping = true;
  log.info({ why }, 'worker stops');
  // whatever hangs, the process goes: a job that was cut off is taken over by the next worker
  setTimeout(() => process.exit(code), STOP_MS).unref();
  await worker.stop().catch((error: unknown) => log.error(error, 'worker stopped untidily'));
  process.exit(code);
}

for (const signal of ['SIGTERM', 'SIGINT'] as const) process.on(signal, () => void stop(signal, 0));
// whoever started this process is gone, however it went
setInterval(() => {
  if (process.ppid !== parent) void stop('its parent process is gone', 0);
}, PARENT_CHECK_MS).unref();

worker.ready.then(
  () => log.info('worker ready'),
  (error: unknown) => {
    log.error(error, 'worker could not start');
    return stop('it could not start', 1);
  },
);
