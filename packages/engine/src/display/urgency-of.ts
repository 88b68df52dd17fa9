import { stopOf } from '../matters/index.ts';
import type { Analysis, ItemResult } from '../wear/result.ts';
import { daysLeft, isOver, limitsInForce } from './limit-to-speak-of.ts';

const BAND = 1_000_000;
const WITHIN = BAND - 1;
/** Laid up, in pieces or away: it waits. */
const WAITING = 100 * BAND;
const SOLD = 200 * BAND;
/** What forbids driving comes before whatever has run out; these two wherever the car stands. */
const FORBIDDEN = { doNotDrive: -30 * BAND, incident: -20 * BAND } as const;
/** Wheels and wake-up steps of a car in use. */
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
 * How urgent one item is: a whole number, smaller first. Bands, in this order: overdue (what happened
 * and makes it due at once, then by the most, measured in its own limits), due soon (by day), lower bound (by what is used), not on record,
 * in limits or without a date (by what is used), one-offs that are done.
 */
export function itemUrgency(item: ItemResult): number {
  switch (item.state) {
    case 'overdue':
      if (item.reasonCode === 'trigger') return place(0, 0);
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
 * How urgent a car is: that of its most urgent item, a car without items last of its kind. Before all
 * come do-not-drive findings and incidents nobody looked into, wherever the car stands; then what else
 * forbids driving a car in use. Cars laid up, in pieces or away come after those in use, sold ones last.
 *
 * @returns an integer from about -30 to 206 million, smaller is more urgent
 */
export function urgencyOf(analysis: Analysis): number {
  const most = Math.min(place(5, 0), ...analysis.items.map(itemUrgency));
  const { status, matters } = analysis;
  if (status === 'sold') return SOLD + most;
  const stop = stopOf(status, matters);
  if (stop === 'doNotDrive' || stop === 'incident') return FORBIDDEN[stop] + most;
  if (status !== 'inUse') return WAITING + most;
  return stop === null ? most : STOPPED + most;
}
