import { civilOf, daysInMonth } from '../calendar/day-number.ts';
import type { StorageWindow } from '../history/storage-windows.ts';

/** How far a forecast looks, in days: three years. Beyond it nothing is said. */
export const HORIZON_DAYS = 1096;
/** A lay-up whose middle lies within half a year of a day says whether that day is one of storage. */
const NEAR_DAYS = 183;

/** Every day from the first of the log to the horizon; the index of a day is `day - firstDay`. */
export type DayTable = {
  firstDay: number;
  asOfDay: number;
  /** 0 January to 11 December */
  month: Uint8Array;
  /** 1 on days in storage */
  stored: Uint8Array;
  /** 1 on days for which no lay-up is known though the car has some: its habit is then in the average */
  habitual: Uint8Array;
  /** by days ahead (0 = asOf): days until then that are not stored */
  activeAhead: Float64Array;
};

/**
 * @param firstDay day number of the first thing the log knows, at most asOfDay
 * @param storage sorted, merged
 */
export function dayTable(
  firstDay: number,
  asOfDay: number,
  storage: readonly StorageWindow[],
): DayTable {
  const length = asOfDay - firstDay + 1 + HORIZON_DAYS;
  const month = monthsOf(firstDay, length);
  const stored = new Uint8Array(length);
  const habitual = new Uint8Array(length);
  if (storage.length > 0) habitual.fill(1);
  for (const { from, until } of storage) {
    stored.fill(1, clip(from - firstDay, length), clip(until + 1 - firstDay, length));
    const middle = (from + until) / 2;
    const near = Math.ceil(middle - NEAR_DAYS) - firstDay;
    habitual.fill(
      0,
      clip(near, length),
      clip(Math.floor(middle + NEAR_DAYS) + 1 - firstDay, length),
    );
  }
  const activeAhead = new Float64Array(HORIZON_DAYS + 1);
  const today = asOfDay - firstDay;
  for (let ahead = 1; ahead <= HORIZON_DAYS; ahead += 1)
    activeAhead[ahead] = (activeAhead[ahead - 1] as number) + (stored[today + ahead] === 1 ? 0 : 1);
  return { firstDay, asOfDay, month, stored, habitual, activeAhead };
}

function clip(index: number, length: number): number {
  return Math.max(0, Math.min(length, index));
}

function monthsOf(firstDay: number, length: number): Uint8Array {
  const months = new Uint8Array(length);
  let { year, month, day } = civilOf(firstDay);
  let at = 0;
  while (at < length) {
    const until = Math.min(length, at + daysInMonth(year, month) - day + 1);
    months.fill(month - 1, at, until);
    at = until;
    day = 1;
    month += 1;
    if (month > 12) {
      month = 1;
      year += 1;
    }
  }
  return months;
}
