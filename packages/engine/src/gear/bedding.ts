import type { Contribution } from '../history/contribution.ts';
import type { Entry } from '../log/entry.ts';
import type { ComponentSort } from '../log/gear.ts';
import { sortEntries } from '../log/sort-entries.ts';
import type { FitEntry } from './fit-windows.ts';
import { BEDDINGS, type Bedding } from './result.ts';

/** The notice that an `answer` about the part names to say how its bedding stands. */
export const BEDDING_NOTICE = 'bedding';

type Said = { state: Bedding; at: number };

type Facts = {
  sort: ComponentSort;
  /** its own entries, removed ones left out */
  entries: readonly Entry[];
  contributions: readonly Contribution[];
  places: ReadonlyMap<string, number>;
  /** place where it was new; null where nobody knows its earlier life */
  newAt: number | null;
};

/**
 * How the bedding of pads and discs stands; null for other parts.
 *
 * The last word counts: that of a fit, or of an `answer` about the part to the notice "bedding" with
 * one of the states as its answer. Without a word, new parts are not bedded and of used ones nobody
 * knows; a part that comes back to the same car keeps its state, on another car it meets other parts
 * and nobody knows. "Bed in the first session" is bedded once a circuit or autocross session was
 * driven with it. "Not bedded" stays until somebody says otherwise: driving alone does not bed them.
 *
 * Source: common practice, no published source.
 */
export function beddingOf({ sort, entries, contributions, places, newAt }: Facts): Bedding | null {
  if (sort !== 'pads' && sort !== 'discs') return null;
  let said: Said = { state: newAt === null ? 'unknown' : 'notBedded', at: newAt ?? 0 };
  let car: string | null = null;
  for (const entry of sortEntries(entries)) {
    const at = places.get(entry.id) ?? Number.POSITIVE_INFINITY;
    const answered = answerOf(entry);
    if (answered !== null) said = { state: answered, at };
    if (entry.kind !== 'fit' || entry.change === 'off') continue;
    const word = wordOf(entry as FitEntry, car);
    if (word !== null) said = { state: word, at };
    car = entry.car ?? car;
  }
  const { state, at } = said;
  if (state !== 'firstSession') return state;
  const driven = contributions.some(
    ({ position, sessions, useClass }) =>
      position > at && sessions > 0 && (useClass === 'circuit' || useClass === 'autocross'),
  );
  return driven ? 'bedded' : state;
}

function answerOf(entry: Entry): Bedding | null {
  if (entry.kind !== 'answer' || entry.notice !== BEDDING_NOTICE) return null;
  return BEDDINGS.find((state) => state === entry.answer) ?? null;
}

/** What a fit says of the bedding; null if it leaves it as it was. */
function wordOf({ bedding, condition, car }: FitEntry, before: string | null): Bedding | null {
  if (bedding !== undefined) return bedding;
  if (condition === 'new') return 'notBedded';
  return before !== null && car !== undefined && car !== before ? 'unknown' : null;
}
