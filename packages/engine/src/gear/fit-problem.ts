import type { EntryInput, EntryOf } from '../log/entry.ts';
import { minuteOfDay } from '../log/sort-entries.ts';
import { samePlace } from './fit-windows.ts';
import type { FitProblem, FitWindow } from './result.ts';

const NOON = 720;

/**
 * Why a component cannot go on as a new entry says: by the record it is on another car, or in another
 * place, at that time. Taking it off first, or recording it as moved, mends it.
 *
 * @param windows the component's, made without the entry in question
 * @param entry as it was sent
 * @returns null where nothing stands against it, which is so for every other entry
 */
export function fitProblem(windows: readonly FitWindow[], entry: EntryInput): FitProblem | null {
  if (entry.kind !== 'fit' || entry.change !== 'on') return null;
  const window = windows.find((it) => covers(it, entry) && !samePlace(it, entry));
  return window === undefined
    ? null
    : { code: 'alreadyFitted', car: window.car, since: window.start };
}

/** At the same minute it is taken off before it is put on again. */
function covers(window: FitWindow, entry: EntryOf<'fit'>): boolean {
  const at = place(entry.on, minuteOfDay(entry));
  if (place(window.start, window.startMinute) > at) return false;
  return window.end === null || at < place(window.end, window.endMinute);
}

function place(on: string, minute: number | null): string {
  return `${on} ${String(minute ?? NOON).padStart(4, '0')}`;
}
