import { type Meter, type Placed, RANK, readingOf, sortPlaced } from './placed.ts';

/** An exchange of an instrument: on that day untimed readings belong to the scale they fit. */
export type Exchange = { meter: Meter; day: number; oldValue: number; newValue: number };

/** Exchanges the log names, as far as the old scale is known and neither has a time. */
export function loggedExchanges(timeline: readonly Placed[]): Exchange[] {
  const exchanges: Exchange[] = [];
  timeline.forEach(({ entry, day }, position) => {
    if (entry.type !== 'meterReset' || entry.minute !== null) return;
    const { meter, newValue } = entry;
    const oldValue = entry.oldValue ?? lastReadingBefore(timeline, position, day, meter);
    if (oldValue !== null) exchanges.push({ meter, day, oldValue, newValue });
  });
  return exchanges;
}

function lastReadingBefore(
  timeline: readonly Placed[],
  position: number,
  day: number,
  meter: Meter,
): number | null {
  for (let at = position - 1; at >= 0; at -= 1) {
    const it = timeline[at] as Placed;
    const value = it.day < day ? readingOf(it.entry, meter) : null;
    if (value !== null) return value;
  }
  return null;
}

/**
 * Moves untimed readings of an exchange day behind the exchange where they fit the new scale:
 * |v - newValue| < |v - oldValue| gives rank 35.
 *
 * @returns the timeline sorted again; the same array where nothing moved
 * @example a reading of 12 km on the day an odometer at 88,000 km was replaced by one at 0
 */
export function settleExchangeDays(
  timeline: readonly Placed[],
  exchanges: readonly Exchange[],
): readonly Placed[] {
  if (exchanges.length === 0) return timeline;
  const byDay = new Map<number, Exchange[]>();
  for (const it of exchanges) byDay.set(it.day, [...(byDay.get(it.day) ?? []), it]);
  let moved = false;
  const settled = timeline.map((it) => {
    if (it.entry.minute !== null || it.rank !== RANK.reading) return it;
    const fits = byDay.get(it.day)?.some(({ meter, oldValue, newValue }) => {
      const value = readingOf(it.entry, meter);
      return value !== null && Math.abs(value - newValue) < Math.abs(value - oldValue);
    });
    if (!fits) return it;
    moved = true;
    return { ...it, rank: RANK.readingAfterExchange };
  });
  return moved ? sortPlaced(settled) : timeline;
}
