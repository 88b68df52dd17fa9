import type { FeedEntry } from './feed-entry.ts';

/** What was published of an entry, kept so that a change is known as one. */
export type Published = {
  uid: string;
  /** what it said, to compare with */
  print: string;
  /** 0 at first, one more with each change */
  sequence: number;
  /** epoch milliseconds */
  modifiedAt: number;
};

export type RevisedEntry = FeedEntry & Pick<Published, 'sequence' | 'modifiedAt'>;

/**
 * Entries with their revisions: one that says something else than was published has a higher sequence, so that
 * a calendar replaces what it holds; one that says the same stays as it was, to the second.
 *
 * @param now epoch milliseconds
 * @returns `published` to be kept until the next time. What is no longer an entry is kept too: should it come
 *   back, it must not begin at 0 again
 */
export function revise(
  entries: readonly FeedEntry[],
  published: readonly Published[],
  now: number,
): { entries: RevisedEntry[]; published: Published[] } {
  const before = new Map(published.map((one) => [one.uid, one]));
  const revised = entries.map((entry): RevisedEntry => {
    const known = before.get(entry.uid);
    if (known === undefined) return { ...entry, sequence: 0, modifiedAt: now };
    const { sequence, modifiedAt } = known;
    if (known.print === printOf(entry)) return { ...entry, sequence, modifiedAt };
    return { ...entry, sequence: sequence + 1, modifiedAt: now };
  });
  const after = new Map(before);
  for (const entry of revised) {
    const { uid, sequence, modifiedAt } = entry;
    after.set(uid, { uid, print: printOf(entry), sequence, modifiedAt });
  }
  const kept = [...after.values()].sort((a, b) => (a.uid < b.uid ? -1 : a.uid > b.uid ? 1 : 0));
  return { entries: revised, published: kept };
}

function printOf({ start, end, summary, description, url, category }: FeedEntry): string {
  return JSON.stringify([start, end, summary, description, url, category]);
}
