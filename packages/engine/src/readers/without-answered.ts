import type { Entry } from '../log/entry.ts';
import { sameUseNotice } from '../log/looks-the-same.ts';
import { keptEntries } from '../matters/index.ts';
import type { Flag } from '../wear/result.ts';

/**
 * Flags without the pairs of uses of which somebody said that both are right: an `answer` to the
 * notice `sameUseNotice()` of the two. An answer that was removed, or is dated later, answers nothing.
 *
 * @param entries of the same book, tombstones included
 * @param asOf civil date
 */
export function withoutAnswered(
  flags: readonly Flag[],
  entries: readonly Entry[],
  asOf: string,
): Flag[] {
  const answered = new Set(
    keptEntries(entries, asOf).flatMap((entry) => (entry.kind === 'answer' ? [entry.notice] : [])),
  );
  return flags.filter(
    ({ code, entry, other }) =>
      code !== 'looksTheSame' ||
      entry === null ||
      !other ||
      !answered.has(sameUseNotice(entry, other)),
  );
}
