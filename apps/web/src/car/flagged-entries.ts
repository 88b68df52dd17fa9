import type { Analysis } from '@quartermark/engine';

/** The api gives so many entries at once; a log with more odd ones shows the rest once these are mended. */
const AT_ONCE = 100;

/** Ids of the entries in which something was found odd; the server's first fetch and the screen ask the same. */
export function flaggedEntries(analysis: Analysis | null): string[] {
  const ids = (analysis?.flags ?? []).map((flag) => flag.entry).filter((id) => id !== null);
  return [...new Set(ids)].slice(0, AT_ONCE);
}
