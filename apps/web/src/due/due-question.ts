import type { DueList } from '@quartermark/api/client';
import { addDays } from '@quartermark/engine/calendar';
import { civilDate } from '@quartermark/engine/log';
import type { DueFilter, DuePart } from './due-filter.ts';

/** How a list goes on from page to page; the server's first fetch and the screen agree on it. */
export const duePages = { getNextPageParam: (page: DueList) => page.next };

/**
 * What the api is asked for one part; the server's first fetch and the screen must ask the same. What is not
 * on record may be due on any day, so no date leaves it out.
 */
export function dueQuestion(garageId: string, filter: DueFilter, part: DuePart) {
  const { sort, car, state, before } = filter;
  const dated = part !== 'unsure' && civilDate.safeParse(before).success;
  return {
    garageId,
    sort,
    filter: {
      part,
      ...(car ? { carId: car } : {}),
      ...(state ? { state } : {}),
      ...(dated ? { before: addDays(before, -1) } : {}),
    },
  };
}

/** So many days ahead the first line speaks of. */
const SOON_DAYS = 15;

/** The day before which the first line tells what falls due. */
export const soonDay = (today: string): string => addDays(today, SOON_DAYS);

/** What the first line needs: what could be due soon in the garage, or of the car that was asked for. */
export function soonQuestion(garageId: string, car: string | null, today: string) {
  const before = addDays(soonDay(today), -1);
  return {
    garageId,
    sort: 'early' as const,
    filter: { part: 'dated' as const, before, ...(car ? { carId: car } : {}) },
  };
}
