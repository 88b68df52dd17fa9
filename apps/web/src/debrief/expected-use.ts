import { addDays, daysBetween } from '@quartermark/engine/calendar';
import {
  distanceKm,
  type EntryInput,
  type EventInput,
  type EventSort,
  type EventUse,
} from '@quartermark/engine/log';

/** How the use at an event is written down: a line for each of its days, or one drive for all of them. */
export const USE_KIND: Readonly<Record<EventSort, 'session' | 'strip' | 'drive'>> = {
  circuit: 'session',
  autocross: 'session',
  dragStrip: 'strip',
  roadTrip: 'drive',
  meet: 'drive',
};

type Days = Pick<EventInput, 'sort' | 'start' | 'end'>;

/**
 * The civil days that have a line of their own, those to come left out.
 *
 * @example daysOfUse({ sort: 'circuit', start: '2026-06-13', end: '2026-06-14' }, '2026-06-15') // both
 */
export function daysOfUse({ sort, start, end = start }: Days, today: string): string[] {
  if (start > today) return [];
  if (USE_KIND[sort] === 'drive') return [start];
  const last = end < today ? end : today;
  return Array.from({ length: daysBetween(start, last) + 1 }, (_, at) => addDays(start, at));
}

/** The day on which what is read once it is over is dated: its last, or today while it is on. */
export function closingDay({ start, end = start }: Days, today: string): string {
  return end < today ? end : today;
}

/** What the plan says of a day beyond what is on record; empty where it says nothing, or nothing is left. */
export type Missing = { count: string; distance: string };

/**
 * What of the plan is not on record yet, for one line. A plan of several days is shared out evenly, the
 * rest of a division on the first days.
 *
 * @param recorded uses of the car that belong to the event
 */
export function missingUse(
  event: Pick<EventInput, 'sort' | 'start' | 'end' | 'use'>,
  on: string,
  recorded: readonly EntryInput[],
): Missing {
  const { sort, start, end = start, use } = event;
  if (use === undefined) return { count: '', distance: '' };
  if (USE_KIND[sort] === 'drive') return { count: '', distance: missingDistance(use, recorded) };
  const planned = sort === 'dragStrip' ? use.launches : use.sessions;
  if (planned === undefined) return { count: '', distance: '' };
  const days = daysBetween(start, end) + 1;
  const at = daysBetween(start, on);
  const share = Math.floor(planned / days) + (at < planned % days ? 1 : 0);
  const left = share - countOf(recorded.filter((entry) => entry.on === on));
  return { count: left > 0 ? String(left) : '', distance: '' };
}

/** Sessions, or starts under full power. */
function countOf(entries: readonly EntryInput[]): number {
  return entries.reduce((sum, entry) => {
    if (entry.kind === 'session') return sum + entry.sessions;
    return entry.kind === 'strip' ? sum + (entry.launches ?? entry.passes.length) : sum;
  }, 0);
}

/** Of a trip on which nothing was written down, what was planned; half a trip is for the person to tell. */
function missingDistance({ distance }: EventUse, recorded: readonly EntryInput[]): string {
  if (distance === undefined || distanceKm(distance) === 0) return '';
  return recorded.some(({ kind }) => kind === 'drive') ? '' : distance.text;
}
