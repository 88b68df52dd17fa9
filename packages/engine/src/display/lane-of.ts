import type { Book } from '../log/book.ts';
import { stopOf } from '../matters/index.ts';
import type { CarOil } from '../oil/oil-answer.ts';
import type { CarReadiness } from '../readiness/result.ts';
import type { Analysis } from '../wear/result.ts';
import type { Lane, LaneItem, LaneOil } from './lane.ts';
import { laneItem } from './lane-item.ts';
import { cut, laneRoad, ROAD_WHY_MAX } from './lane-road.ts';
import { levelFractions } from './likely-level-words.ts';
import { needsALook } from './needs-a-look.ts';
import { oilStopOf } from './oil-stop-sentence.ts';
import { itemUrgency } from './urgency-of.ts';

/** The most a lane may take as JSON, in UTF-8 bytes. */
export const LANE_BYTES_MAX = 1024;
/** The most characters of an item's name, and of why the road has to wait, until all fits. */
const LENGTHS = [
  [60, ROAD_WHY_MAX],
  [40, ROAD_WHY_MAX],
  [40, 40],
  [24, 40],
  [24, 24],
] as const;
/** Tried once no more than one item is left: a name of six letters tells less than a second item is worth. */
const LAST_LENGTHS = [...LENGTHS, [12, 24], [6, 24]] as const;

/** To a thousandth: a metre, some seconds, finer than anybody sees, and short. */
const short = (amount: number) => Math.round(amount * 1000) / 1000;

function bytes(lane: Lane): number {
  return new TextEncoder().encode(JSON.stringify(lane)).length;
}

function urgent(book: Book, analysis: Analysis): LaneItem[] {
  const byId = new Map(book.items.map((item) => [item.id, item]));
  return analysis.items
    .map((result, position) => ({ result, position, urgency: itemUrgency(result) }))
    .sort((a, b) => a.urgency - b.urgency || a.position - b.position)
    .slice(0, 3)
    .map(({ result }) => laneItem(result, byId.get(result.id)))
    .map((item) =>
      item.remaining === null ? item : { ...item, remaining: short(item.remaining) },
    );
}

/** The level in hundredths of the span: finer than anybody sees, and short. */
function laneOil(oil: CarOil): LaneOil | null {
  const stop = oilStopOf(oil);
  if (oil.status === 'none') return stop === null ? null : { level: null, rough: true, stop };
  const of = (fraction: number) => Math.round(fraction * 100) / 100;
  const { low, likely, high } = levelFractions(oil);
  const level = { low: of(low), likely: of(likely), high: of(high) };
  return { level, rough: oil.status === 'weak', stop };
}

/**
 * What the overview shows of a car, small enough that a list of hundreds stays quick: names are cut
 * to 60 characters and the reason about the road to 80, both down to 24 where that does not fit; then items
 * are left off the end before the lane grows beyond 1 KB.
 *
 * @param analysis of the same book
 * @param road its readiness for the road that day; null where it is not in use
 */
export function laneOf(book: Book, analysis: Analysis, road: CarReadiness | null): Lane {
  const { odometer, lastLevel: level, laidUp, status, matters } = analysis;
  const rest = {
    oil: laneOil(analysis.oil),
    odometer: odometer && { readingKm: short(odometer.readingKm), on: odometer.on },
    level: level && {
      fraction: level.fraction,
      mark: level.mark,
      on: level.on,
      addedSinceL: short(level.addedSinceL),
      changedSince: level.changedSince,
    },
    laidUp: laidUp && { since: laidUp.since, until: laidUp.until },
    status,
    stop: stopOf(status, matters),
    open: matters.findings.length + matters.incidents.length,
    flags: analysis.flags.filter((flag) => needsALook(flag.code)).length,
  };
  const items = urgent(book, analysis);
  for (let count = items.length; count >= 0; count--)
    for (const [name, why] of count > 1 ? LENGTHS : LAST_LENGTHS) {
      const next = items.slice(0, count).map((item) => ({ ...item, name: cut(item.name, name) }));
      const lane = { next, ...rest, road: laneRoad(road, why) };
      if (bytes(lane) <= LANE_BYTES_MAX) return lane;
    }
  return { next: [], ...rest, road: laneRoad(road, 24) };
}
