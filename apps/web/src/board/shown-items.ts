import type { Lane, LaneItem } from '@quartermark/engine/display';
import { mayGo, type PlacedEvent } from './place.ts';

type Dated = Parameters<typeof mayGo>[0];

/**
 * What a lane shows before it is opened: the next thing, whatever has run out, and what may fall due
 * before the car's next event begins.
 *
 * @param items most urgent first
 * @param events by their first day
 */
export function shownAtFirst(
  items: readonly LaneItem[],
  carId: string,
  events: readonly PlacedEvent<Dated & { eventId: string }>[],
): LaneItem[] {
  const next = events.find((one) => mayGo(one, carId));
  return items.filter(
    (item, index) =>
      index === 0 ||
      item.state === 'overdue' ||
      (next !== undefined && mayFallBefore(item, next.event.start)),
  );
}

/** By the day it could be as early as: what may be due at an event is to be seen before it. */
function mayFallBefore(
  { state, early, likely, day, reasonCode }: LaneItem,
  start: string,
): boolean {
  if (state === 'unknown' || reasonCode === 'doneOnce') return false;
  const first = early ?? likely ?? day;
  return first !== null && first <= start;
}

type Counts = Record<'overdue' | 'dueSoon' | 'notOnRecord', number>;

/** How many items that ask for something are not among those shown. */
export function leftOut(shown: readonly LaneItem[], { overdue, dueSoon, notOnRecord }: Counts) {
  const of = (counts: (item: LaneItem) => boolean) => shown.filter(counts).length;
  return (
    Math.max(0, overdue - of(({ state }) => state === 'overdue')) +
    Math.max(0, dueSoon - of(({ state }) => state === 'dueSoon')) +
    Math.max(0, notOnRecord - of(({ reasonCode }) => reasonCode === 'noBaseline'))
  );
}

/** There may be more to a car than its lane shows; three items are all that the overview holds. */
export function mayHoldMore(lane: Pick<Lane, 'next'>, shown: number, leftOut: number): boolean {
  return shown < lane.next.length || leftOut > 0 || lane.next.length >= 3;
}
