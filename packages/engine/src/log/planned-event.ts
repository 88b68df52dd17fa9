import { daysBetween } from '../calendar/add.ts';
import type { PlannedEvent } from './book.ts';
import type { EventInput, EventUse } from './event.ts';
import type { EventSort } from './event-sort.ts';
import type { UseClass } from './item.ts';
import { type Distance, distanceKm } from './quantity.ts';

/** As what the use at an event counts. A drive to a meet is a tour. */
export const USE_OF_SORT: Readonly<Record<EventSort, UseClass>> = {
  meet: 'touring',
  roadTrip: 'touring',
  circuit: 'circuit',
  dragStrip: 'strip',
  autocross: 'autocross',
};

const SESSIONS_A_DAY = { circuit: 4, autocross: 1 } as const;
const LAUNCHES_A_DAY = 6;
const TOUR_A_DAY = { km: 250, mi: 150 } as const;

/**
 * What a car usually does at an event of a sort, to be proposed and never to be counted unseen: 4
 * sessions a day on a circuit, 1 (one day's runs) at an autocross, 6 launches a day on a drag strip,
 * 250 km or 150 miles a day on a road trip. Nothing for a meet.
 *
 * @param days how many days it lasts, 1 or more
 * @param unit in which a distance is proposed
 * Source: common practice for club days, no published source.
 * @example usualUse('circuit', 2, 'km') // { sessions: 8 }
 */
export function usualUse(sort: EventSort, days: number, unit: Distance['unit']): EventUse {
  switch (sort) {
    case 'circuit':
    case 'autocross':
      return { sessions: SESSIONS_A_DAY[sort] * days };
    case 'dragStrip':
      return { launches: LAUNCHES_A_DAY * days };
    case 'roadTrip':
      return { distance: { text: String(TOUR_A_DAY[unit] * days), unit } };
    case 'meet':
      return {};
  }
}

/** How many days an event lasts, both ends included. @example eventDays({ start: '2026-07-24', end: '2026-07-27' }) // 4 */
export function eventDays({ start, end = start }: Pick<EventInput, 'start' | 'end'>): number {
  return daysBetween(start, end) + 1;
}

/**
 * An event as one car's book counts it ahead.
 *
 * @returns null where it does not count for the car: it does not name the car, or it says of no
 *   amount more than zero what is to be done there
 * @example plannedEventOf('e1', { sort: 'circuit', cars: ['a'], use: { sessions: 4 }, ... }, 'a')
 */
export function plannedEventOf(id: string, event: EventInput, carId: string): PlannedEvent | null {
  const { name, sort, start, end, cars, use, attend } = event;
  if (!cars.includes(carId) || use === undefined) return null;
  const { distance, hours, sessions, launches } = use;
  const amounts = {
    ...(distance !== undefined && { km: distanceKm(distance) }),
    ...(hours !== undefined && { hours }),
    ...(sessions !== undefined && { sessions }),
    ...(launches !== undefined && { launches }),
  };
  if (!Object.values(amounts).some((amount) => amount > 0)) return null;
  const days = { start, ...(end !== undefined && { end }) };
  return { id, name, ...days, use: USE_OF_SORT[sort], ...amounts, attend };
}
