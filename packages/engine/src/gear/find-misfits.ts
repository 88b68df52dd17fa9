import type { Book } from '../log/book.ts';
import type { Entry } from '../log/entry.ts';
import type { Flag } from '../wear/result.ts';
import type { FitEntry } from './fit-windows.ts';
import type { Merged } from './merge-timelines.ts';
import type { PlacedWindow } from './part-ledger.ts';

/**
 * Sessions that name a tyre set while, by the fits, it was not on that car: their use counts for
 * whatever was.
 */
export function findSetsNotOn(
  gear: string,
  cars: readonly Book[],
  windows: readonly PlacedWindow[],
  { places }: Merged,
  asOf: string,
): Flag[] {
  return cars.flatMap((book) =>
    book.entries
      .filter((entry) => names(entry, gear) && entry.on <= asOf)
      .filter(({ id }) => {
        const at = places.get(id) ?? Number.POSITIVE_INFINITY;
        return !windows.some(
          ({ window, from, until }) => window.car === book.car.id && at > from && at <= until,
        );
      })
      .map(({ id, on }): Flag => ({ code: 'setNotOn', entry: id, on, value: null })),
  );
}

function names(entry: Entry, gear: string): boolean {
  return entry.kind === 'session' && !entry.removed && entry.tyreSet === gear;
}

/**
 * Fits that share a day with a use of the same car while neither has a time: the use counts as before
 * the fit, which somebody should confirm. One flag per fit, naming the first such use.
 */
export function findAssumedFitOrders(
  fits: readonly FitEntry[],
  windows: readonly PlacedWindow[],
): Flag[] {
  return fits.flatMap((fit): Flag[] => {
    if (fit.time !== undefined || fit.dayOrder !== undefined) return [];
    const touched = windows.filter(
      ({ window }) => window.entry === fit.id || window.closedBy === fit.id,
    );
    for (const { part } of touched) {
      const use = part?.history.timeline.find(
        ({ entry }) => entry.type === 'use' && entry.date === fit.on && entry.minute === null,
      );
      if (use !== undefined)
        return [
          { code: 'fitOrderAssumed', entry: fit.id, on: fit.on, value: null, other: use.entry.id },
        ];
    }
    return [];
  });
}
