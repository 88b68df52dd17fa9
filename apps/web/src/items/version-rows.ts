import type { VersionRow } from '../forms/BothVersions.tsx';
import type { VersionLine } from './item-lines.ts';

/** Sets two versions beside each other, line by line; both speak of the same lines. */
export function versionRows(
  mine: readonly VersionLine[],
  newest: readonly VersionLine[],
): VersionRow[] {
  const byLabel = new Map(newest.map(({ label, words }) => [label, words]));
  return mine.map(({ label, words }) => ({
    label,
    mine: words,
    newest: byLabel.get(label) ?? 'not given',
  }));
}
