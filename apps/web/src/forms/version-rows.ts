import type { VersionRow } from './BothVersions.tsx';

/** One thing that can be said of a thing in one version, to be set beside another version. */
export type VersionLine = { label: string; words: string };

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
