import { parseDay } from '@quartermark/engine/calendar';
import { formatDay } from '@quartermark/engine/display';
import type { EventInput, EventSort } from '@quartermark/engine/log';
import { daysAgo } from '../garage/days-ago.ts';

export const EVENT_NAME: Readonly<Record<EventSort, string>> = {
  meet: 'Meet',
  roadTrip: 'Road trip',
  circuit: 'Circuit',
  dragStrip: 'Drag strip',
  autocross: 'Autocross',
};

type Days = Pick<EventInput, 'start' | 'end'>;

export const lastDay = ({ start, end }: Days): string => end ?? start;

/** Its days. @example spanWords({ start: '2026-07-24', end: '2026-07-27' }) // "24 to 27 July 2026" */
export function spanWords({ start, end }: Days): string {
  if (end === undefined || end === start) return formatDay(start);
  const [day, month, year] = formatDay(start).split(' ');
  const [, endMonth, endYear] = formatDay(end).split(' ');
  if (year !== endYear) return `${formatDay(start)} to ${formatDay(end)}`;
  return month === endMonth
    ? `${day} to ${formatDay(end)}`
    : `${day} ${month} to ${formatDay(end)}`;
}

/** How far off it is. @example whenWords({ start: '2026-06-20' }, '2026-06-15') // "in 5 days" */
export function whenWords(days: Days, today: string): string {
  if (days.start > today) return daysAgo(days.start, today);
  return lastDay(days) >= today ? 'on now' : daysAgo(lastDay(days), today);
}

type Dated = { event: EventInput };

/** What comes or is on, and what is over, each in the order in which one asks for it. */
export function splitEvents<E extends Dated>(
  events: readonly E[],
  today: string,
): { coming: E[]; past: E[] } {
  const byStart = [...events].sort((a, b) => parseDay(a.event.start) - parseDay(b.event.start));
  return {
    coming: byStart.filter(({ event }) => lastDay(event) >= today),
    past: byStart.filter(({ event }) => lastDay(event) < today).reverse(),
  };
}

/** The first line of the calendar: what is on or comes next, and in how many days. */
export function eventsAnswer(events: readonly Dated[], today: string): string {
  const [next] = splitEvents(events, today).coming;
  if (!next) return 'Nothing that comes is on the calendar.';
  const { event } = next;
  if (event.start > today)
    return `Next is ${event.name}, ${whenWords(event, today)}: ${spanWords(event)}.`;
  const last = lastDay(event);
  return last === today
    ? `${event.name} is on today.`
    : `${event.name} is on, until ${formatDay(last)}.`;
}
