import { parseDay } from '../calendar/day-number.ts';
import type { Flag } from '../wear/result.ts';
import type { CarCase, CaseEntry, CaseItem, ServiceEntry } from './case.ts';
import { type Placed, RANK, readingOf, sortPlaced, UNTIMED_MINUTE } from './placed.ts';

function rankOf(entry: CaseEntry): number {
  if (entry.type === 'use') return RANK.use;
  if (entry.type === 'meterReset') return RANK.meterReset;
  const reads = readingOf(entry, 'odo') !== null || readingOf(entry, 'hours') !== null;
  return entry.type === 'service' && !reads ? RANK.serviceWithoutReading : RANK.reading;
}

/** A starting point reads as a service entry of its item alone. */
function startingPointOf(item: CaseItem): ServiceEntry | null {
  if (item.baseline === null) return null;
  const { date, minute, odometerKm, complete } = item.baseline;
  return {
    type: 'service',
    id: null,
    date,
    minute,
    recorded: null,
    kind: 'service',
    canonical: JSON.stringify([item.id, date, minute, odometerKm, complete]),
    items: [item.id],
    odometerKm,
    hourMeterH: null,
    complete,
  };
}

function place(entry: CaseEntry, startingPoint: boolean): Placed {
  return {
    entry,
    day: parseDay(entry.date),
    minute: entry.minute ?? UNTIMED_MINUTE,
    rank: rankOf(entry),
    startingPoint,
  };
}

/**
 * Puts a car's entries and its items' starting points into their order.
 *
 * @param car the case; nothing of it is changed
 * @param asOfDay the day the answer is for; what is dated later is set aside with a flag
 * @returns the sorted timeline and the flags of what was set aside
 */
export function placeEntries(car: CarCase, asOfDay: number): { timeline: Placed[]; flags: Flag[] } {
  const starts = car.items.map(startingPointOf).filter((start) => start !== null);
  const all = [
    ...car.entries.map((entry) => place(entry, false)),
    ...starts.map((entry) => place(entry, true)),
  ];
  const future = all.filter(({ day }) => day > asOfDay);
  return {
    timeline: sortPlaced(all.filter(({ day }) => day <= asOfDay)),
    flags: future.map(({ entry }) => ({
      code: 'future',
      entry: entry.id,
      on: entry.date,
      value: null,
    })),
  };
}
