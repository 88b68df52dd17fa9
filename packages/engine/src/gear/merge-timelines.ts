import { parseDay } from '../calendar/day-number.ts';
import type { History } from '../history/build-history.ts';
import type { Contribution } from '../history/contribution.ts';
import { type Placed, positionOf, RANK, sortPlaced, UNTIMED_MINUTE } from '../history/placed.ts';
import type { MeterHistory, UnknownGap } from '../history/read-meter.ts';

/** One car's history with its places in the merged timeline. */
export type CarPart = {
  car: string;
  history: History;
  contributions: Contribution[];
  /** place of a car's own position */
  placeOf(position: number): number;
};

export type Merged = {
  timeline: readonly Placed[];
  cars: readonly CarPart[];
  /** place of an entry, by its id */
  places: ReadonlyMap<string, number>;
};

/**
 * Lays the timelines of several cars and the entries about a part itself into one order, and gives
 * every contribution its place there. Entries keep the order they have on their own car.
 *
 * @param histories by car id; nothing of them is changed
 * @param own entries about the part that stand in no car's timeline
 */
export function mergeTimelines(
  histories: ReadonlyMap<string, History>,
  own: readonly Placed[],
): Merged {
  const timeline = sortPlaced([
    ...[...histories.values()].flatMap((history) => history.timeline),
    ...own,
  ]);
  const indexOf = new Map(timeline.map((placed, index) => [placed, index]));
  const places = new Map<string, number>();
  timeline.forEach(({ entry: { id, type } }, index) => {
    // a use and the reading at its end share an id: the entry is over with the reading
    if (id !== null && (type !== 'use' || !places.has(id))) places.set(id, index);
  });
  const cars = [...histories].map(([car, history]): CarPart => {
    const placeOf = (position: number) =>
      indexOf.get(history.timeline[position] as Placed) ?? position;
    const contributions = history.contributions.map((it) => ({
      ...it,
      position: Number.isInteger(it.position) ? placeOf(it.position) : halfStep(timeline, it),
      source: placeOf(it.source),
      since: it.since === null ? null : placeOf(it.since),
    }));
    return { car, history, contributions, placeOf };
  });
  return { timeline, cars, places };
}

/**
 * Shares that stand half a step before an entry are found again by what put them there: a later day
 * of a logged use counts as an untimed use, a share of what a meter shows before all else of its day.
 */
function halfStep(timeline: readonly Placed[], { day, since }: Contribution): number {
  const before =
    since === null
      ? positionOf(timeline, day, UNTIMED_MINUTE, RANK.use)
      : positionOf(timeline, day, -1, 0);
  return before - 0.5;
}

/** Place of the first moment of a day: before all of its entries. */
export function startOfDay(timeline: readonly Placed[], date: string): number {
  return positionOf(timeline, parseDay(date), -1, 0) - 0.5;
}

/** A meter's gaps of unknown use, as places in the merged timeline. */
export function gapsOf(part: CarPart, meter: MeterHistory): UnknownGap[] {
  return meter.unknownGaps.map(({ after, until }) => ({
    after: after < 0 ? Number.NEGATIVE_INFINITY : part.placeOf(after),
    until: part.placeOf(until),
  }));
}
