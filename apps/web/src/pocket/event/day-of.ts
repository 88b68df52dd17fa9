import type { EventPage } from '@quartermark/api/client';
import { lastDay } from '../../event/event-words.ts';

/**
 * The events that can be opened in the paddock: those that run today, then those that come, by their first
 * day. What is over since the sheet was kept is left out.
 *
 * @param today civil date in the garage's zone
 */
export function daysToShow(days: readonly EventPage[], today: string): EventPage[] {
  return days
    .filter(({ event: { event } }) => lastDay(event) >= today)
    .toSorted((a, b) => compare(a.event.event.start, b.event.event.start));
}

type Recorded = {
  /** by how much the garage's clock is ahead of this phone's */
  aheadMs: number;
  /** when something was last recorded here, by this phone's clock; null: never */
  lastMs: number | null;
  /** entries of the garage that wait in this browser */
  waiting: number;
};

/** True where something was recorded on this phone that a page worked out by then cannot know of. */
export function isOlder({ at }: Pick<EventPage, 'at'>, recorded: Recorded): boolean {
  const { aheadMs, lastMs, waiting } = recorded;
  return waiting > 0 || (lastMs !== null && lastMs + aheadMs > Date.parse(at));
}

const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
