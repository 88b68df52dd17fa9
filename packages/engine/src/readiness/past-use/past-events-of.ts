import { daysBetween } from '../../calendar/add.ts';
import type { Entry } from '../../log/entry.ts';
import type { PastEvent } from '../asked.ts';
import { type DatedEvent, usesOfEvent } from './uses-of-event.ts';

/** What happened longer ago is not asked about any more. Common practice, no source. */
const LOOK_BACK_DAYS = 60;

/**
 * The events that named a car and ended before today, up to 60 days ago, the last first, each with whether it
 * is on record: a use of the car belongs to it, or somebody answered that the car did not go, by an `answer`
 * of the car whose `notice` is the event's id.
 *
 * @param events of the garage
 * @param entries of any cars, tombstones included
 * @param today civil date
 */
export function pastEventsOf(
  carId: string,
  events: readonly DatedEvent[],
  entries: readonly Entry[],
  today: string,
): PastEvent[] {
  const own = entries.filter((entry) => entry.car === carId && !entry.removed);
  const answered = new Set(own.flatMap((entry) => (entry.kind === 'answer' ? entry.notice : [])));
  return events
    .filter(({ event: { cars, start, end = start } }) => {
      const ago = daysBetween(end, today);
      return cars.includes(carId) && ago > 0 && ago <= LOOK_BACK_DAYS;
    })
    .map((dated) => {
      const { name, sort, start, end = start } = dated.event;
      const onRecord = answered.has(dated.id) || usesOfEvent(dated, own, events).length > 0;
      return { id: dated.id, name, sort, start, end, onRecord };
    })
    .sort((a, b) => compare(b.end, a.end) || compare(b.start, a.start) || compare(a.id, b.id));
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
