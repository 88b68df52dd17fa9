import { parseDay } from '../calendar/day-number.ts';
import { stopOf } from '../matters/index.ts';
import { type Analysis, type ItemResult, isAmountLimit } from '../wear/result.ts';
import { isOver, limitsInForce } from './limit-to-speak-of.ts';
import { isUrgent, oilStopOf } from './oil-stop-sentence.ts';

const BAND = 1_000_000;
const WITHIN = BAND - 1;
/** Laid up, in pieces or away: it waits. */
const WAITING = 100 * BAND;
const SOLD = 200 * BAND;
/** What forbids driving comes before whatever has run out; these two wherever the car stands. */
const FORBIDDEN = { doNotDrive: -40 * BAND, incident: -30 * BAND } as const;
/** Wheels and wake-up steps of a car in use. */
const STOPPED = -20 * BAND;

/** Oil that is low, gone or too much, of a car in use: it may cost the engine. */
const OIL_STOPPED = -10 * BAND;

/** 0..1 for 0 and up, so that every amount finds a place inside its band. */
function squash(value: number): number {
  const positive = Math.max(0, value);
  return positive === Number.POSITIVE_INFINITY ? 1 : positive / (1 + positive);
}

function place(band: number, within: number): number {
  return band * BAND + Math.round(within * WITHIN);
}

/** Days are told apart until then, so that a day takes whole places of a band: 2106-11-25. */
const LAST_ORDERED_DAY = 50_000;

/** 0..1 for days from 1970 on: an earlier day before a later one, whenever it is asked. */
function byDay(day: string): number {
  return Math.min(1, Math.max(0, parseDay(day) / LAST_ORDERED_DAY));
}

/** The day by which something due soon may be due; null where only a lay-up could tell. */
function soonDay(item: ItemResult): string | null {
  const forecast = item.dueDate?.p10 ?? item.dueDate?.p50;
  if (forecast != null) return forecast;
  const days = limitsInForce(item).flatMap((limit) =>
    isAmountLimit(limit) ? [] : [limit.dueDate],
  );
  return days.sort()[0] ?? null;
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
 * and makes it due at once, then by the most, measured in its own limits), due soon (by the day it could
 * be as early as), lower bound (by what is used), not on record, in limits (by the likely day, then what
 * has no day by what is used), one-offs that are done.
 */
export function itemUrgency(item: ItemResult): number {
  switch (item.state) {
    case 'overdue':
      if (item.reasonCode === 'trigger') return place(0, 0);
      return place(0, 1 - squash(furthest(item, isOver)));
    case 'dueSoon': {
      const day = soonDay(item);
      return place(1, day === null ? 1 : byDay(day));
    }
    case 'unknown':
      if (item.reasonCode === 'lowerBound') return place(2, 1 - squash(furthest(item, () => true)));
      return place(3, 0);
    case 'fine':
      if (item.reasonCode === 'doneOnce') return place(5, 1);
      return place(4, inLimits(item));
    case null:
      return place(4, inLimits(item));
  }
}

/** What has a likely day in the first half of the band, the rest in the second. */
function inLimits(item: ItemResult): number {
  const likely = item.dueDate?.p50 ?? null;
  if (likely !== null) return byDay(likely) / 2;
  // less than all is used, so this is more than a half
  return 1 - squash(furthest(item, () => true));
}

/**
 * How urgent a car is: that of its most urgent item, a car without items last of its kind. Before all
 * come do-not-drive findings and incidents nobody looked into, wherever the car stands; then what else
 * forbids driving a car in use, then oil that cannot wait. Cars laid up, in pieces or away come after those in use, sold ones last.
 *
 * @returns an integer from about -40 to 206 million, smaller is more urgent
 */
export function urgencyOf(analysis: Analysis): number {
  const most = Math.min(place(5, 0), ...analysis.items.map(itemUrgency));
  const { status, matters } = analysis;
  if (status === 'sold') return SOLD + most;
  const stop = stopOf(status, matters);
  if (stop === 'doNotDrive' || stop === 'incident') return FORBIDDEN[stop] + most;
  if (status !== 'inUse') return WAITING + most;
  if (stop !== null) return STOPPED + most;
  return isUrgent(oilStopOf(analysis.oil)) ? OIL_STOPPED + most : most;
}
