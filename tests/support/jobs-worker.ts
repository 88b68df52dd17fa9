import {
  addressPolicyOf,
  type Clock,
  type RunningWorker,
  startWorker,
  type WorkerOptions,
} from '@quartermark/jobs/worker';
import pino from 'pino';
import type { FreshDatabase } from './database.ts';
import { redisIsHere, startRedis, type TestRedis } from './redis.ts';

export type Backend = 'PostgreSQL' | 'Redis';

/** Both engines of the queue; where Redis is missing its tests are shown as skipped. */
export const BACKENDS: ReadonlyArray<{ backend: Backend; here: boolean }> = [
  { backend: 'PostgreSQL', here: true },
  { backend: 'Redis', here: redisIsHere },
];

/** A Redis of its own for that backend, none for the other. */
export const redisFor = (backend: Backend): Promise<TestRedis | null> =>
  backend === 'Redis' ? startRedis() : Promise.resolve(null);

export const clockAt = (instant: string): Clock & { set(instant: string): void } => {
  let now = new Date(instant);
  return {
    now: () => now,
    set(later) {
      now = new Date(later);
    },
  };
};

export const TEST_DAY = '2026-03-10T10:00:00Z';

export const silent = pino({ level: process.env.TEST_LOG ?? 'silent' });

/** A worker on a test's database. Polls and sweeps do not come by themselves unless a test asks. */
export function workerOn(
  database: FreshDatabase,
  redis: TestRedis | null,
  options: Partial<WorkerOptions>,
): RunningWorker {
  return startWorker({
    databaseJobUrl: database.jobUrl,
    redisUrl: redis?.url,
    origin: 'https://garage.example',
    policy: addressPolicyOf('', ''),
    clock: clockAt(TEST_DAY),
    log: silent,
    ...options,
    pace: { pollMs: 3_600_000, reconcileMs: 3_600_000, tickMs: 3_600_000, ...options.pace },
  });
}
