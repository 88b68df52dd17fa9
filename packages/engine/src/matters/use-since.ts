import type { History } from '../history/build-history.ts';
import { firstAfter } from '../wear/accrue.ts';

/** What a car did since an entry: km and sessions; null where the entry is not in the history. */
export type UseSince = { distanceKm: number | null; sessions: number | null };

/**
 * What a car did after an entry of its log. Kilometres that nobody knows (across an instrument that was
 * exchanged unlogged) make the distance unknown; sessions are counted as logged.
 */
export function useSince(history: History, position: number): UseSince {
  const gap = history.odometer.unknownGaps.some(({ until }) => until > position);
  let distanceKm = 0;
  let sessions = 0;
  const { contributions } = history;
  for (const it of contributions.slice(firstAfter(contributions, position))) {
    distanceKm += it.distanceKm;
    if (it.useClass === 'circuit' || it.useClass === 'autocross') sessions += it.sessions;
  }
  return { distanceKm: gap ? null : distanceKm, sessions };
}
