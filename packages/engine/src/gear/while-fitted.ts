import type { Book } from '../log/book.ts';
import type { Entry } from '../log/entry.ts';
import { minuteOfDay } from '../log/sort-entries.ts';
import type { FitWindow } from './result.ts';

/**
 * What happened on its cars while a part was on them, for what makes its items due at once.
 *
 * On the day of a fit, where one of the two has no time, it counts: a look too many harms nobody.
 *
 * @param asOf what is dated later is left out, as tombstones are
 */
export function entriesWhileFitted(
  windows: readonly FitWindow[],
  cars: readonly Book[],
  asOf: string,
): Entry[] {
  return cars.flatMap(({ car, entries }) => {
    const here = windows.filter((window) => window.car === car.id);
    return entries.filter(
      (entry) =>
        !entry.removed && entry.on <= asOf && here.some((window) => mayCover(window, entry)),
    );
  });
}

function mayCover(window: FitWindow, entry: Entry): boolean {
  const minute = minuteOfDay(entry);
  const after = (on: string, at: number | null) =>
    entry.on > on || (entry.on === on && (at === null || minute === null || minute >= at));
  const before = (on: string, at: number | null) =>
    entry.on < on || (entry.on === on && (at === null || minute === null || minute <= at));
  return (
    after(window.start, window.startMinute) &&
    (window.end === null || before(window.end, window.endMinute))
  );
}
