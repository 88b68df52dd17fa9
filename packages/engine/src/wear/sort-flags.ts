import type { Flag } from './result.ts';

/** Flags in one order, whatever order they were found in: by code, day, entry, value, second entry. */
export function sortFlags(flags: readonly Flag[]): Flag[] {
  const keyed = flags.map((flag) => ({ flag, key: keyOf(flag) }));
  keyed.sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : 0));
  return keyed.map(({ flag }) => flag);
}

function keyOf({ code, on, entry, value, other }: Flag): string {
  return JSON.stringify([code, on, entry, value, other ?? null]);
}
