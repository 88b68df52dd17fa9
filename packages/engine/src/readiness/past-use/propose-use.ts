import { type EventUse, USE_MEASURES, USE_MOST } from '../../log/event.ts';
import type { EventSort } from '../../log/event-sort.ts';
import { eventDays, USE_OF_SORT, usualUse } from '../../log/planned-event.ts';
import { distanceKm } from '../../log/quantity.ts';
import { type DistanceUnit, KM_PER_UNIT } from '../../log/units.ts';
import { type DatedEvent, type RecordedUse, useClassOf } from './uses-of-event.ts';

/** A former event and the uses that belong to it, of all its cars; see `usesOfEvent()`. */
export type FormerEvent = { event: DatedEvent; uses: readonly RecordedUse[] };

/** What a car may do at an event: proposed, and never counted unseen. */
export type ProposedUse = {
  use: EventUse;
  /** what this car did; what the garage's cars did; common practice */
  from: 'car' | 'garage' | 'practice';
  /** ids of the former events it rests on */
  events: string[];
};

/** What one car did on a day of one event, in the usual measure of the sort: a count, or km. */
type DayAmount = { event: string; car: string; amount: number };

/** From there on a proposed distance is a multiple of ten. */
const ROUND_FROM = 100;

/**
 * What a car may do at an event of a sort, in its usual measure, all days together.
 *
 * The median of what this car did per event day at former events of the sort; where it has done none, that of
 * the garage's cars; else `usualUse()`. Counts are whole, at least 1; a distance is whole, from 100 on in tens.
 * A road trip of which a drive has no distance does not count.
 *
 * @param days how many the event lasts, 1 or more
 * @param unit in which a distance is proposed
 * @param past former events of any sort
 * @example proposeUse('circuit', 2, 'km', 'a', [twoDaysOfTenSessions]) // { use: { sessions: 10 }, from: 'car', events: ['e'] }
 */
export function proposeUse(
  sort: EventSort,
  days: number,
  unit: DistanceUnit,
  carId: string,
  past: readonly FormerEvent[],
): ProposedUse {
  const all = past
    .filter(({ event }) => event.event.sort === sort)
    .flatMap((former) => dayAmountsOf(former, sort));
  const own = all.filter(({ car }) => car === carId);
  const [from, found] = own.length > 0 ? (['car', own] as const) : (['garage', all] as const);
  if (found.length === 0) return { use: usualUse(sort, days, unit), from: 'practice', events: [] };
  const amount = medianOf(found.map((one) => one.amount)) * days;
  const events = [...new Set(found.map(({ event }) => event))];
  return { use: useOf(sort, amount, unit), from, events };
}

function dayAmountsOf({ event, uses }: FormerEvent, sort: EventSort): DayAmount[] {
  const days = eventDays(event.event);
  const totals = new Map<string, number>();
  for (const use of uses) {
    if (use.car === undefined || useClassOf(use) !== USE_OF_SORT[sort]) continue;
    totals.set(use.car, (totals.get(use.car) ?? 0) + amountOf(use));
  }
  return [...totals].flatMap(([car, total]) =>
    total > 0 ? [{ event: event.id, car, amount: total / days }] : [],
  );
}

/** Sessions, launches or km; no number where a drive has no distance. */
function amountOf(use: RecordedUse): number {
  switch (use.kind) {
    case 'session':
      return use.sessions;
    case 'strip':
      return use.launches ?? use.passes.length;
    case 'drive':
      return use.distance === undefined ? Number.NaN : distanceKm(use.distance);
  }
}

function medianOf(amounts: readonly number[]): number {
  const sorted = amounts.toSorted((a, b) => a - b);
  const middle = sorted.length >> 1;
  const upper = sorted[middle] ?? 0;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? upper) + upper) / 2;
}

function useOf(sort: EventSort, amount: number, unit: DistanceUnit): EventUse {
  const [measure = 'distance'] = USE_MEASURES[sort];
  const most = USE_MOST[measure];
  const whole = (value: number, step = 1) =>
    Math.min(most, Math.max(1, Math.round(value / step) * step));
  if (measure !== 'distance') return { [measure]: whole(amount) };
  const value = amount / KM_PER_UNIT[unit];
  return { distance: { text: String(whole(value, value < ROUND_FROM ? 1 : 10)), unit } };
}
