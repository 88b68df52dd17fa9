import type { Entry } from '../log/entry.ts';
import type { WakeStep } from './result.ts';

/**
 * What was done for the last lay-up and has not been undone: each line comes back as a step before the
 * car moves, until a later wake-up names the same thing, whatever it says was done to it. A later
 * lay-up brings its own list; what is still so then stands in that.
 *
 * @param kept entries of one car without tombstones, in the order of the log
 */
export function wakeSteps(kept: readonly Entry[]): WakeStep[] {
  const at = kept.findLastIndex(({ kind }) => kind === 'layUp');
  const layUp = kept[at];
  if (layUp?.kind !== 'layUp') return [];
  const { id, lines = [], keysAt = null } = layUp;
  const undone = new Set(
    kept
      .slice(at + 1)
      .flatMap((entry) => (entry.kind === 'wakeUp' ? (entry.lines ?? []) : []))
      .map(({ what }) => plain(what)),
  );
  return lines
    .filter(({ what }) => !undone.has(plain(what)))
    .map((line) => ({ ...line, layUp: id, keysAt }));
}

/** Capitals and blanks make no other thing of it. */
function plain(what: string): string {
  return what.trim().toLowerCase().replace(/\s+/g, ' ');
}
