import type { Entry } from '../log/entry.ts';
import { sortEntries } from '../log/sort-entries.ts';

/**
 * Entries that are no tombstones and not dated after a day, in the order of the log.
 *
 * @param last the last civil date that counts
 */
export function keptEntries(entries: readonly Entry[], last: string): Entry[] {
  return sortEntries(entries.filter(({ removed, on }) => !removed && on <= last));
}
