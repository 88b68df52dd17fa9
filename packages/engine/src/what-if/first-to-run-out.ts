import type { Outlook, RunsOut } from './outlook.ts';

/** An item that runs out, and during what. */
export type FirstToRunOut = RunsOut & { outlookId: string };

const PLACE = { already: 0, likely: 1, could: 2 } as const;

/**
 * Of several events, each item that runs out with the first in which it does: the surest first, then by the
 * latest day for the work.
 */
export function firstToRunOut(outlooks: readonly Outlook[]): FirstToRunOut[] {
  const first = new Map<string, FirstToRunOut>();
  for (const { id: outlookId, runsOut } of outlooks)
    for (const one of runsOut) {
      const known = first.get(one.id);
      if (known === undefined || isSooner(one, known)) first.set(one.id, { ...one, outlookId });
    }
  return [...first.values()].sort((a, b) => PLACE[a.how] - PLACE[b.how] || byWork(a, b));
}

function isSooner(one: RunsOut, known: RunsOut): boolean {
  return byWork(one, known) < 0 || (byWork(one, known) === 0 && PLACE[one.how] < PLACE[known.how]);
}

function byWork(a: RunsOut, b: RunsOut): number {
  const [one, other] = [a.latestWork ?? '', b.latestWork ?? ''];
  return one < other ? -1 : one > other ? 1 : 0;
}
