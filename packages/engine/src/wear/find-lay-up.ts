import { formatDay, parseDay } from '../calendar/day-number.ts';
import type { CarCase } from '../history/case.ts';
import type { Analysis } from './result.ts';

/**
 * The storage that covers a day, overlapping and adjacent windows taken as one.
 *
 * @param storage windows as in the case; `end` null = open
 * @param asOfDay day number
 * @returns its first day, its last day (null while any of its windows is open) and the id of the
 *   window begun last; null if the car is not laid up
 */
export function findLayUp(storage: CarCase['storage'], asOfDay: number): Analysis['laidUp'] {
  const windows = storage
    .map(({ id, start, end }) => ({
      id,
      from: parseDay(start),
      until: end === null ? Number.POSITIVE_INFINITY : parseDay(end),
    }))
    .filter(({ from, until }) => until >= from)
    .sort((a, b) => a.from - b.from || a.until - b.until || (a.id < b.id ? -1 : 1));
  let joined: { id: string; from: number; until: number } | null = null;
  for (const window of windows) {
    const apart: boolean = joined === null || window.from > joined.until + 1;
    if (apart && window.from > asOfDay) break;
    if (joined === null || apart) joined = { ...window };
    else
      joined = {
        id: window.from <= asOfDay && window.until >= asOfDay ? window.id : joined.id,
        from: joined.from,
        until: Math.max(joined.until, window.until),
      };
  }
  if (joined === null || joined.until < asOfDay) return null;
  return {
    id: joined.id,
    since: formatDay(joined.from),
    until: Number.isFinite(joined.until) ? formatDay(joined.until) : null,
  };
}
