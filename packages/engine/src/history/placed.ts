import type { CaseEntry } from './case.ts';

/** An entry with its place in the order of things. Its index in the timeline is its position. */
export type Placed = {
  entry: CaseEntry;
  day: number;
  /** local minute 0..1439; 720 where no time is known */
  minute: number;
  rank: number;
  /** true for an item's starting point: it serves and reads like an entry, but is none of the log */
  startingPoint: boolean;
};

/** What counts first on the same minute of the same day. */
export const RANK = {
  use: 10,
  reading: 20,
  meterReset: 30,
  /** a reading that already belongs to the new instrument, on the day of its exchange */
  readingAfterExchange: 35,
  serviceWithoutReading: 40,
} as const;

/** The minute that an entry without a time counts as: noon. */
export const UNTIMED_MINUTE = 720;

export type Meter = 'odo' | 'hours';

/** What an entry reads off a meter: km or h; null where it reads nothing. Exchanges read nothing. */
export function readingOf(entry: CaseEntry, meter: Meter): number | null {
  if (entry.type !== 'reading' && entry.type !== 'service') return null;
  return meter === 'odo' ? entry.odometerKm : entry.hourMeterH;
}

function compare<T extends number | string>(a: T, b: T): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function meterValue(entry: CaseEntry): number {
  return readingOf(entry, 'odo') ?? readingOf(entry, 'hours') ?? 0;
}

function comparePlaced(a: Placed, b: Placed): number {
  return (
    a.day - b.day ||
    a.minute - b.minute ||
    a.rank - b.rank ||
    compare(meterValue(a.entry), meterValue(b.entry)) ||
    compare(
      a.entry.recorded ?? Number.POSITIVE_INFINITY,
      b.entry.recorded ?? Number.POSITIVE_INFINITY,
    ) ||
    compare(a.entry.kind, b.entry.kind) ||
    compare(a.entry.canonical, b.entry.canonical) ||
    compare(a.entry.id ?? '', b.entry.id ?? '')
  );
}

/**
 * Sorts by the full key: day, minute, rank, meter value, the server's ordinal (missing: last), kind,
 * and as the last resort the entry itself, so that shuffling the input never changes the result.
 */
export function sortPlaced(placed: readonly Placed[]): Placed[] {
  return [...placed].sort(comparePlaced);
}

/**
 * Where a mark, which is none of the timeline's own entries, belongs among them: half a step before
 * the first that comes after it. O(log n).
 */
export function placeOfMark(timeline: readonly Placed[], mark: Placed): number {
  let low = 0;
  let high = timeline.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (comparePlaced(timeline[middle] as Placed, mark) < 0) low = middle + 1;
    else high = middle;
  }
  return low - 0.5;
}

/** Position of the first entry that does not lie before the day, minute and rank. O(log n). */
export function positionOf(
  timeline: readonly Placed[],
  day: number,
  minute: number,
  rank: number,
): number {
  let low = 0;
  let high = timeline.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    const it = timeline[middle] as Placed;
    const before = it.day - day || it.minute - minute || it.rank - rank;
    if (before < 0) low = middle + 1;
    else high = middle;
  }
  return low;
}
