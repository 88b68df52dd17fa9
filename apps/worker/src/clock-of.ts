import type { Clock } from '@quartermark/jobs/worker';
import type { Env } from './env.ts';

const DAY_MS = 86_400_000;

/**
 * The real clock. In the test build it may be moved by whole days, so that today (UTC) is the given day,
 * time runs on, and processes started at different moments agree.
 */
export function clockOf(env: Env): Clock {
  const offsetMs =
    __TEST_BUILD__ && env.QUARTERMARK_TODAY
      ? Date.parse(env.QUARTERMARK_TODAY) - Math.floor(Date.now() / DAY_MS) * DAY_MS
      : 0;
  return { now: () => new Date(Date.now() + offsetMs) };
}
