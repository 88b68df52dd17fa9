import type { Entry, EntryOf } from '../log/entry.ts';
import { minuteOfDay, sortEntries } from '../log/sort-entries.ts';
import type { Flag } from '../wear/result.ts';
import type { FitWindow } from './result.ts';

export type FitEntry = EntryOf<'fit'> & Entry;

export type Fits = {
  /** fit entries that count, in order */
  entries: FitEntry[];
  windows: FitWindow[];
  /** what does not fit together, in no particular order */
  flags: Flag[];
};

function isFit(entry: Entry): entry is FitEntry {
  return entry.kind === 'fit' && !entry.removed;
}

/**
 * Folds a component's fit entries into its times on cars, by the sort key of the log.
 *
 * `on` opens, `off` closes, `moved` closes and opens: on the same car where the entry names none. A
 * second `on` at the same car and place changes nothing, unless it says new: then the part was renewed
 * there. An `on` elsewhere is believed, because a part can be in one place only: the window before
 * ends there, and both are marked as a conflict.
 *
 * @param entries about ONE component, tombstones and other kinds included, in any order
 */
export function foldFits(entries: readonly Entry[]): Fits {
  const fits: Fits = { entries: sortEntries(entries.filter(isFit)), windows: [], flags: [] };
  for (const entry of fits.entries) {
    const last = fits.windows.at(-1);
    const open = last !== undefined && last.end === null ? last : null;
    if (entry.change === 'off') takeOff(fits, entry, open);
    else if (entry.change === 'moved') move(fits, entry, open);
    else putOn(fits, entry, open);
  }
  return fits;
}

/** The component's times on cars, in order. See `foldFits()`. */
export function fitWindows(entries: readonly Entry[]): FitWindow[] {
  return foldFits(entries).windows;
}

/** Same car, and the positions are the same or not said on one side. */
export function samePlace(
  window: Pick<FitWindow, 'car' | 'positions'>,
  { car, positions = [] }: Pick<FitEntry, 'car' | 'positions'>,
): boolean {
  if (car !== undefined && car !== window.car) return false;
  if (positions.length === 0 || window.positions.length === 0) return true;
  const plain = (list: readonly string[]) => JSON.stringify(list.map(lower).sort());
  return plain(positions) === plain(window.positions);
}

function lower(text: string): string {
  return text.toLowerCase();
}

function putOn(fits: Fits, entry: FitEntry, open: FitWindow | null): void {
  if (entry.car === undefined) {
    fits.flags.push(flag('fitWithoutCar', entry));
    return;
  }
  if (open === null) {
    begin(fits, entry, entry.car, []);
    return;
  }
  const same = samePlace(open, entry);
  if (same && entry.condition !== 'new') return;
  close(open, entry);
  const next = begin(fits, entry, entry.car, same ? open.positions : []);
  if (same) return;
  open.conflict = true;
  next.conflict = true;
  fits.flags.push({ ...flag('fitConflict', entry), other: open.entry });
}

function takeOff(fits: Fits, entry: FitEntry, open: FitWindow | null): void {
  const elsewhere = entry.car !== undefined && entry.car !== open?.car;
  if (open === null || elsewhere) fits.flags.push(flag('fitNotOn', entry));
  else close(open, entry);
}

function move(fits: Fits, entry: FitEntry, open: FitWindow | null): void {
  const car = entry.car ?? open?.car;
  if (car === undefined) {
    fits.flags.push(flag('fitWithoutCar', entry));
    return;
  }
  if (open === null) fits.flags.push(flag('fitNotOn', entry));
  else close(open, entry);
  begin(fits, entry, car, open?.car === car ? open.positions : []);
}

function begin(fits: Fits, entry: FitEntry, car: string, fallback: readonly string[]): FitWindow {
  const positions = entry.positions ?? [];
  const window: FitWindow = {
    car,
    positions: positions.length > 0 ? positions : fallback,
    start: entry.on,
    startMinute: minuteOfDay(entry),
    end: null,
    endMinute: null,
    entry: entry.id,
    closedBy: null,
    conflict: false,
  };
  fits.windows.push(window);
  return window;
}

function close(window: FitWindow, by: FitEntry): void {
  window.end = by.on;
  window.endMinute = minuteOfDay(by);
  window.closedBy = by.id;
}

function flag(code: Flag['code'], entry: FitEntry): Flag {
  return { code, entry: entry.id, on: entry.on, value: null };
}
