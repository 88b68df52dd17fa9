import type { EventList, EventView } from '@quartermark/api/client';
import { lastDay } from '../event/event-words.ts';

/** The event that runs today, the one that ends first; null on any other day. */
export function eventOfToday({ events, garage: { today } }: EventList): EventView | null {
  const running = events.filter(({ event }) => event.start <= today && today <= lastDay(event));
  return running.toSorted((a, b) => lastDay(a.event).localeCompare(lastDay(b.event)))[0] ?? null;
}
