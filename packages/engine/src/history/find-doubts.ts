import { parseDay } from '../calendar/day-number.ts';
import type { Flag } from '../wear/result.ts';
import type { UseEntry } from './case.ts';
import type { Placed } from './placed.ts';

/**
 * Uses that look the same: same days, time (or none), class and equal amounts, under different ids.
 * Each later one is flagged with the first. Uses without any amount count nothing twice and are left
 * alone.
 */
export function findLookAlikes(timeline: readonly Placed[]): Flag[] {
  const first = new Map<string, UseEntry>();
  const flags: Flag[] = [];
  for (const { entry } of timeline) {
    if (entry.type !== 'use') continue;
    const { date, minute, useClass, distanceKm, hours, sessions, launches } = entry;
    if ((distanceKm ?? hours ?? sessions ?? launches) === null) continue;
    const key = `${date} ${entry.endDate ?? date} ${minute} ${useClass} ${distanceKm} ${hours} ${sessions} ${launches}`;
    const earlier = first.get(key);
    if (earlier === undefined) first.set(key, entry);
    else if (earlier.id === null || earlier.id !== entry.id)
      flags.push({
        code: 'looksTheSame',
        entry: entry.id,
        on: entry.date,
        value: null,
        other: earlier.id,
      });
  }
  return flags;
}

/**
 * Services that share a day with a use while neither has a time: the use counts as before the
 * service, which somebody should confirm. One flag per service, naming the last such use.
 */
export function findAssumedOrders(timeline: readonly Placed[]): Flag[] {
  const services = new Map<number, Placed[]>();
  for (const it of timeline) {
    if (it.entry.type !== 'service' || it.entry.minute !== null) continue;
    services.set(it.day, [...(services.get(it.day) ?? []), it]);
  }
  const lastUse = new Map<Placed, UseEntry>();
  const shares = (on: number, use: UseEntry) => {
    for (const service of services.get(on) ?? []) lastUse.set(service, use);
  };
  for (const { entry, day } of timeline) {
    if (entry.type !== 'use') continue;
    if (entry.minute === null) shares(day, entry);
    if (entry.endDate === null) continue;
    // a time belongs to the first day alone
    const until = parseDay(entry.endDate);
    for (const on of services.keys()) if (on > day && on <= until) shares(on, entry);
  }
  return [...lastUse].map(([service, use]) => ({
    code: 'orderAssumed',
    entry: service.entry.id,
    on: service.entry.date,
    value: null,
    other: use.id,
  }));
}
