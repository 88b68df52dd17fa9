import type { Answer } from './answer.ts';

/** How far a group is, for its heading. @example groupNow(2, 5) // "2 of 5 answered" */
export function groupNow(answered: number, all: number): string {
  if (answered === all) return 'all answered';
  return answered === 0 ? `${all} open` : `${answered} of ${all} answered`;
}

export type Tally = { added: number; open: number; notHere: number };

/** @param keys of the proposals that are shown */
export function tallyOf(keys: readonly string[], answers: Record<string, Answer>): Tally {
  const tally = { added: 0, open: 0, notHere: 0 };
  for (const key of keys) {
    const standing = answers[key]?.standing;
    if (standing === undefined) tally.open += 1;
    else if (standing === 'notHere') tally.notHere += 1;
    else tally.added += 1;
  }
  return tally;
}

/** What saving will do, and what it will not do. */
export function tallyWords({ added, open, notHere }: Tally): string {
  const parts = [
    added === 0 ? 'Nothing is added yet.' : `${items(added)} will be added.`,
    open === 0 ? '' : `${open} left open: not added, and not watched.`,
    notHere === 0 ? '' : `${notHere} not on this car: not added.`,
  ];
  return parts.filter((part) => part !== '').join(' ');
}

export function items(count: number): string {
  return count === 1 ? '1 item' : `${count} items`;
}
