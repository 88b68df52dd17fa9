import { canonicalJson } from './canonical-json.ts';
import type { EntryInput } from './entry.ts';
import { distanceKm } from './quantity.ts';

/** What makes two uses the same one: day, kind, class and amounts. Null for anything but a use. */
function amounts(entry: EntryInput): unknown {
  if (entry.kind === 'drive')
    return [entry.use, entry.until, entry.distance && distanceKm(entry.distance)];
  if (entry.kind === 'session')
    return [entry.use, entry.sessions, entry.hours, entry.distance && distanceKm(entry.distance)];
  if (entry.kind === 'strip') return [entry.passes.length, entry.launches ?? entry.passes.length];
  return null;
}

/** A text that two uses share exactly when they look the same; null for anything but a use. */
export function sameUseKey(entry: EntryInput): string | null {
  const what = amounts(entry);
  return what === null ? null : canonicalJson([entry.on, entry.kind, what]);
}

/**
 * True where two entries of one car look like the same use written twice: same day, kind, class and
 * amounts, and their times, where both have one, agree. Both count until a person says otherwise.
 */
export function looksTheSame(a: EntryInput, b: EntryInput): boolean {
  if (a.id === b.id) return false;
  const key = sameUseKey(a);
  if (key === null || key !== sameUseKey(b)) return false;
  return a.time === undefined || b.time === undefined || a.time === b.time;
}

/**
 * The notice that two uses look the same, as an `answer` names it; the same whichever comes first.
 *
 * @example sameUseNotice('b', 'a') // "looksTheSame:a:b"
 */
export function sameUseNotice(one: string, other: string): string {
  const [first, second] = one < other ? [one, other] : [other, one];
  return `looksTheSame:${first}:${second}`;
}
