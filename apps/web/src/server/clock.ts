import type { Clock } from '@quartermark/api/server';

const DAY_MS = 86_400_000;

/**
 * The clock of this process. With a pinned day, whole days are added to the real time, so that time
 * still runs; only a test build passes one.
 *
 * @param pinnedDay `YYYY-MM-DD`, or null for the real day
 */
export function makeClock(pinnedDay: string | null): Clock {
  if (pinnedDay === null) return { now: () => new Date() };
  const dayStart = Math.floor(Date.now() / DAY_MS) * DAY_MS;
  const offsetMs = Date.parse(`${pinnedDay}T00:00:00Z`) - dayStart;
  return { now: () => new Date(Date.now() + offsetMs) };
}
