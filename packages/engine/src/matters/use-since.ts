import type { History } from '../history/build-history.ts';
import { placeOfMark } from '../history/placed.ts';
import type { Entry } from '../log/entry.ts';
import { roundAmount } from '../wear/round-amount.ts';
import { markOf } from './mark-of.ts';

/** What a car did since an entry: km (null = not known), and circuit and autocross sessions and drag-strip days. */
export type UseSince = { distanceKm: number | null; sessions: number };

/**
 * What a car did after an entry of its log. Kilometres that nobody knows (across an instrument that was
 * exchanged unlogged) make the distance unknown; sessions are counted as logged. Days of an interval
 * between two readings stand at one place in the order of things: the later ones count.
 */
export function useSince(history: History, entry: Entry): UseSince {
  const mark = markOf(entry);
  const place = placeOfMark(history.timeline, mark);
  const after = history.contributions.filter(
    ({ position, day }) => position > place || (position === place && day > mark.day),
  );
  const gap = history.odometer.unknownGaps.some(({ until }) => until > place);
  const distanceKm = after.reduce((sum, it) => sum + it.distanceKm, 0);
  const sessions = after
    .filter(({ useClass }) => useClass === 'circuit' || useClass === 'autocross')
    .reduce((sum, it) => sum + it.sessions, 0);
  const strip = after.filter(({ useClass }) => useClass === 'strip').map(({ source }) => source);
  return {
    distanceKm: gap ? null : roundAmount(distanceKm),
    sessions: sessions + new Set(strip).size,
  };
}
