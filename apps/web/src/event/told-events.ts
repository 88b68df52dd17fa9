import type { EventList } from '@quartermark/api/client';
import { splitEvents } from './event-words.ts';

/** Of so many events that come next it is told what runs out on the cars that go. */
const EVENTS_TOLD = 3;
/** Each car is a forecast of its own: so many are worked out unasked, further ones when they are asked for. */
const CARS_UNASKED = 4;

/** The events of which it is told what runs out before they are over, and the cars told without being asked. */
export function toldEvents({
  events,
  garage,
  cars,
}: Pick<EventList, 'events' | 'garage' | 'cars'>): {
  eventIds: string[];
  unasked: string[];
} {
  const told = splitEvents(events, garage.today).coming.slice(0, EVENTS_TOLD);
  const here = told.flatMap(({ event }) => event.cars.filter((id) => cars[id] !== undefined));
  return {
    eventIds: told.map(({ eventId }) => eventId),
    unasked: [...new Set(here)].slice(0, CARS_UNASKED),
  };
}
