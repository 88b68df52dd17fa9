import type { Entry } from '../log/entry.ts';
import { sortEntries } from '../log/sort-entries.ts';
import type { WakeStep } from './result.ts';

/**
 * What was done for the last lay-up and has not been undone: each line comes back as a step before the
 * car moves. A wake-up undoes the lines it names, whatever it says they were; a later lay-up brings its
 * own list beside what is still open.
 *
 * @param entries of one car, tombstones included
 * @param asOf civil date
 */
export function wakeSteps(entries: readonly Entry[], asOf: string): WakeStep[] {
  const open = new Map<string, WakeStep>();
  for (const entry of sortEntries(entries.filter(({ removed, on }) => !removed && on <= asOf))) {
    if (entry.kind === 'layUp')
      for (const line of entry.lines ?? [])
        open.set(plain(line.what), { ...line, layUp: entry.id, keysAt: entry.keysAt ?? null });
    if (entry.kind === 'wakeUp') for (const { what } of entry.lines ?? []) open.delete(plain(what));
  }
  return [...open.values()];
}

function plain(what: string): string {
  return what.trim().toLowerCase();
}
