import { stopOf } from '../matters/index.ts';
import type { Analysis, ItemResult } from '../wear/result.ts';
import { daysLeft, isOver, limitsInForce } from './limit-to-speak-of.ts';

const BAND = 1_000_000;
const WITHIN = BAND - 1;
const LAID_UP = 100 * BAND;
/** Away or sold: nothing can be done to it here. */
const GONE = 200 * BAND;
/** What forbids driving comes before whatever has run out. */
const STOPPED = -10 * BAND;

/** 0..1 for 0 and up, so that every amount finds a place inside its band. */
function squash(value: number): number {
  const positive = Math.max(0, value);
  return positive === Number.POSITIVE_INFINITY ? 1 : positive / (1 + positive);
}

function place(band: number, within: number): number {
  return band * BAND + Math.round(within * WITHIN);
}

function furthest(
  item: ItemResult,
  only: (limit: ItemResult['limits'][number]) => boolean,
): number {
  return Math.max(
    0,
    ...limitsInForce(item)
      .filter(only)
      .map((limit) => limit.fraction),
  );
}

/**
 * How urgent one item is: a whole number, smaller first. Bands, in this order: overdue (by the most
 * first, measured in its own limits), due soon (by day), lower bound (by what is used), not on record,
 * in limits or without a date (by what is used).
 */
export function itemUrgency(item: ItemResult): number {
  switch (item.state) {
    case 'overdue':
      return place(0, 1 - squash(furthest(item, isOver)));
    case 'dueSoon': {
      const days = Math.min(...limitsInForce(item).map(daysLeft));
      return place(1, squash(days / 30));
    }
    case 'unknown':
      if (item.reasonCode === 'lowerBound') return place(2, 1 - squash(furthest(item, () => true)));
      return place(3, 0);
    case 'fine':
      if (item.reasonCode === 'doneOnce') return place(5, 1);
      return place(4, 1 - squash(furthest(item, () => true)));
    case null:
      return place(4, 1 - squash(furthest(item, () => true)));
  }
}

/**
 * How urgent a car is: that of its most urgent item; a laid-up car comes after all that are in use, a
 * car without items last of its kind. What forbids driving a car in use comes before everything, a
 * car that is away or sold after everything.
 *
 * @returns an integer from about -10 to 206 million, smaller is more urgent
 */
export function urgencyOf(analysis: Analysis): number {
  const most = Math.min(place(5, 0), ...analysis.items.map(itemUrgency));
  const { status, matters } = analysis;
  if (status === 'sold' || status === 'away') return GONE + most;
  if (status === 'laidUp') return LAID_UP + most;
  return stopOf(status, matters) === null ? most : STOPPED + most;
}
