import { parseDay } from '../calendar/day-number.ts';
import { type Placed, RANK, UNTIMED_MINUTE } from '../history/placed.ts';
import { canonicalJson } from '../log/canonical-json.ts';
import type { Entry } from '../log/entry.ts';
import { distanceKm } from '../log/quantity.ts';
import { minuteOfDay } from '../log/sort-entries.ts';

/** An entry that only needs its place in the order of things: it reads and serves nothing. */
export function markOf(entry: Entry): Placed {
  const { id, on, recorded, kind, odometer } = entry;
  const minute = minuteOfDay(entry);
  const isUse = kind === 'session' || kind === 'drive' || kind === 'strip';
  return {
    entry: {
      type: 'reading',
      id,
      date: on,
      minute,
      recorded,
      kind,
      canonical: canonicalJson(entry),
      odometerKm: odometer === undefined || isUse ? null : distanceKm(odometer),
      hourMeterH: null,
    },
    day: parseDay(on),
    minute: minute ?? UNTIMED_MINUTE,
    rank: isUse ? RANK.use : odometer === undefined ? RANK.serviceWithoutReading : RANK.reading,
    startingPoint: false,
  };
}
