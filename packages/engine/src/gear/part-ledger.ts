import type { Contribution } from '../history/contribution.ts';
import { inOrder } from '../history/spread-uses.ts';
import type { AmountMeasure } from '../log/item.ts';
import type { Ledger } from '../wear/ledger.ts';
import type { Fits } from './fit-windows.ts';
import type { LifeStart } from './life-start.ts';
import { type CarPart, gapsOf, type Merged } from './merge-timelines.ts';
import type { FitWindow } from './result.ts';

/** A window with its places: use counts if it lies after `from` and not after `until`. */
export type PlacedWindow = {
  window: FitWindow;
  from: number;
  until: number;
  /** null where the car's book was not given */
  part: CarPart | null;
};

export function placeWindows({ windows }: Fits, { cars, places }: Merged): PlacedWindow[] {
  return windows.map((window) => ({
    window,
    from: places.get(window.entry) ?? Number.POSITIVE_INFINITY,
    until:
      window.closedBy === null
        ? Number.POSITIVE_INFINITY
        : (places.get(window.closedBy) ?? Number.POSITIVE_INFINITY),
    part: cars.find(({ car }) => car === window.car) ?? null,
  }));
}

/** What the cars did while the part was on them, in order. */
export function partContributions(windows: readonly PlacedWindow[]): Contribution[] {
  return windows
    .flatMap(({ part, from, until }) =>
      (part?.contributions ?? []).filter(({ position }) => position > from && position <= until),
    )
    .sort(inOrder);
}

/** A component's own ledger: use inside its windows, and whether that is all it has done. */
export function partLedger(
  merged: Merged,
  asOfDay: number,
  windows: readonly PlacedWindow[],
  newSince: LifeStart | null,
): Ledger {
  return {
    asOfDay,
    timeline: merged.timeline,
    contributions: partContributions(windows),
    isKnown: ({ position, entry }, measure) =>
      isCovered(windows, position, measure, entry.complete, newSince),
    forecasts: null,
    projectTo: [],
  };
}

/**
 * Whether all use of a component since a place is in the log.
 *
 * Never if a window since then is in doubt, its car's book is missing, or a use of unknown amount lies
 * inside it. Else yes if the history since is said to be complete; or if the place does not lie before
 * what the log knows of the part (it was new then, or its first fit), and on each car since then the
 * measure's meter had been read before the part did anything there.
 *
 * @param position place in the merged timeline; use after it counts
 */
export function isCovered(
  windows: readonly PlacedWindow[],
  position: number,
  measure: AmountMeasure,
  complete: boolean,
  newSince: LifeStart | null,
): boolean {
  const since = windows.filter(({ until }) => until > position);
  const each = since.every(
    (it) => !it.window.conflict && it.part !== null && isWhole(it, it.part, position, measure),
  );
  if (!each || complete) return each;
  const first = newSince?.position ?? windows[0]?.from ?? Number.POSITIVE_INFINITY;
  if (position < Math.min(first, windows[0]?.from ?? first)) return false;
  return since.every(
    (it) => it.part !== null && begins(it, it.part, measure) <= Math.max(position, it.from),
  );
}

function isWhole(
  { from, until }: PlacedWindow,
  part: CarPart,
  position: number,
  measure: AmountMeasure,
): boolean {
  const after = Math.max(from, position);
  const meter = meterOf(part, measure);
  const gap = meter && gapsOf(part, meter).some((it) => it.until > after && it.after < until);
  if (gap) return false;
  if (measure !== 'hours') return true;
  // road use without hours, on a car where the distance does not give them
  return !part.contributions.some(
    (it) =>
      it.hoursOpen &&
      it.hours === 0 &&
      it.distanceKm > 0 &&
      part.history.hourMeter.kept.length === 0 &&
      it.position > after &&
      it.position <= until,
  );
}

function meterOf({ history }: CarPart, measure: AmountMeasure) {
  if (measure === 'km') return history.odometer;
  if (measure === 'hours')
    return history.hourMeter.kept.length > 0 ? history.hourMeter : history.odometer;
  return undefined;
}

/** Counts, and cars without the meter, are known since the part went on: that entry is in the log. */
function begins({ from }: PlacedWindow, part: CarPart, measure: AmountMeasure): number {
  const first = meterOf(part, measure)?.kept[0];
  return first === undefined ? from : part.placeOf(first.position);
}
