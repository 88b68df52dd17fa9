import type { MeterResetEntry } from './case.ts';
import { type Meter, type Placed, readingOf } from './placed.ts';

/** A value on a meter's scale, at its place in the timeline. */
export type MeterPoint = {
  position: number;
  day: number;
  /** as given: km or h */
  reading: number;
  /** the same, unwrapped where the odometer rolled over */
  value: number;
};

/** What lies between two logged exchanges of a meter. */
export type Section = {
  points: MeterPoint[];
  /** the exchange that opens it; null for the first section */
  opensAt: number | null;
  /** the exchange that closes it; null for the last section */
  closesAt: number | null;
  /** true if that exchange gave the old instrument's last value */
  lastValueGiven: boolean;
};

/**
 * Sorts a meter's values into sections. An exchange closes one at its old value, where given, and
 * opens the next at its new value; both count as readings of their section.
 */
export function meterSections(timeline: readonly Placed[], meter: Meter): Section[] {
  let section: Section = { points: [], opensAt: null, closesAt: null, lastValueGiven: false };
  const sections = [section];
  timeline.forEach(({ entry, day }, position) => {
    const add = (value: number) => section.points.push({ position, day, reading: value, value });
    if (isResetOf(entry, meter)) {
      if (entry.oldValue !== null) add(entry.oldValue);
      section.closesAt = position;
      section.lastValueGiven = entry.oldValue !== null;
      section = { points: [], opensAt: position, closesAt: null, lastValueGiven: false };
      sections.push(section);
      add(entry.newValue);
      return;
    }
    const value = readingOf(entry, meter);
    if (value !== null) add(value);
  });
  return sections;
}

function isResetOf(entry: Placed['entry'], meter: Meter): entry is MeterResetEntry {
  return entry.type === 'meterReset' && entry.meter === meter;
}
