import type { Clock } from '@quartermark/api/server';

const BLOCK_MS = 8 * 3_600_000;

/**
 * The clock of this process. A pinned day begins at 08:00 UTC at the start of the present third of the
 * real day, and time runs on from there: whenever the tests run, it is that civil day in every zone
 * they use, and web and worker agree without speaking to each other. Only a test build passes one.
 *
 * @param pinnedDay `YYYY-MM-DD`, or null for the real day
 */
export function makeClock(pinnedDay: string | null): Clock {
  if (pinnedDay === null) return { now: () => new Date() };
  const blockStart = Math.floor(Date.now() / BLOCK_MS) * BLOCK_MS;
  const offsetMs = Date.parse(`${pinnedDay}T08:00:00Z`) - blockStart;
  return { now: () => new Date(Date.now() + offsetMs) };
}
