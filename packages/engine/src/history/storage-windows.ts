import { parseDay } from '../calendar/day-number.ts';
import { OPEN_LAY_UP_DAYS } from '../log/planned-lay-up.ts';
import type { CarCase } from './case.ts';

/** Days in storage, both ends inclusive. */
export type StorageWindow = { from: number; until: number };

/**
 * Storage as days: overlapping and adjacent windows are one; a window without an end lasts until
 * asOf or 150 days from its start, whichever is later.
 *
 * @param storage as in the case, in any order
 * @param asOfDay day number
 */
export function storageWindows(storage: CarCase['storage'], asOfDay: number): StorageWindow[] {
  const windows = storage
    .map(({ start, end }) => {
      const from = parseDay(start);
      return {
        from,
        until: end === null ? Math.max(asOfDay, from + OPEN_LAY_UP_DAYS) : parseDay(end),
      };
    })
    .filter(({ from, until }) => until >= from)
    .sort((a, b) => a.from - b.from || a.until - b.until);
  const merged: StorageWindow[] = [];
  for (const window of windows) {
    const last = merged.at(-1);
    if (last !== undefined && window.from <= last.until + 1)
      last.until = Math.max(last.until, window.until);
    else merged.push({ ...window });
  }
  return merged;
}

/** True if the day lies in one of the windows (sorted, disjoint). O(log n). */
export function isStored(windows: readonly StorageWindow[], day: number): boolean {
  let low = 0;
  let high = windows.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((windows[middle] as StorageWindow).until < day) low = middle + 1;
    else high = middle;
  }
  const window = windows[low];
  return window !== undefined && window.from <= day;
}
