import type { Clock } from '@quartermark/jobs/worker';
import type { Env } from './env.ts';

const BLOCK_MS = 8 * 3_600_000;

/**
 * The real clock. In the test build a pinned day begins at 08:00 UTC at the start of the present third
 * of the real day, and time runs on: it is that civil day in every zone the tests use, and processes
 * started at different moments agree.
 */
export function clockOf(env: Env): Clock {
  const offsetMs =
    __TEST_BUILD__ && env.QUARTERMARK_TODAY
      ? Date.parse(`${env.QUARTERMARK_TODAY}T08:00:00Z`) -
        Math.floor(Date.now() / BLOCK_MS) * BLOCK_MS
      : 0;
  return { now: () => new Date(Date.now() + offsetMs) };
}
