import type { Outcome } from './outcome.ts';

const MINUTE_S = 60;
const HOUR_S = 3600;

/**
 * Waits after the first, second, ... try, seconds: 15 hours in all, so that one night's letter is
 * delivered or given up before the next night's is due. Own choice.
 */
const WAITS_S: readonly number[] = [
  MINUTE_S,
  5 * MINUTE_S,
  15 * MINUTE_S,
  HOUR_S,
  2 * HOUR_S,
  4 * HOUR_S,
  8 * HOUR_S,
];

export const MOST_TRIES = WAITS_S.length + 1;
const LONGEST_ASKED_S = 8 * HOUR_S;

/**
 * The wait after a try, seconds: a table with a fifth more or less, so that letters that failed together
 * do not all come back together.
 *
 * @param tries how many were made, from 1
 * @param jitter drawn evenly from 0 to below 1 by the caller
 * @returns null where no further try is made
 * @throws RangeError where tries or jitter are none
 */
export function waitAfter(tries: number, jitter: number): number | null {
  if (!Number.isInteger(tries) || tries < 1)
    throw new RangeError(`cannot wait after ${tries} tries: it should be a whole number from 1`);
  if (!(jitter >= 0 && jitter < 1))
    throw new RangeError(`cannot spread by ${jitter}: it should be from 0 to below 1`);
  const wait = WAITS_S[tries - 1];
  return wait === undefined ? null : Math.round(wait * (0.8 + 0.4 * jitter));
}

/** Where a delivery stands; what is given up is a row that a person can see, with the last words. */
export type Delivery =
  | { is: 'delivered'; tries: number; said: string }
  | { is: 'waiting'; tries: number; waitS: number; said: string }
  | { is: 'givenUp'; tries: number; because: 'refused' | 'triesUsedUp'; said: string };

/**
 * Where a delivery stands after one more try.
 *
 * @param tries how many were made, this one included
 * @param jitter as for `waitAfter`
 */
export function afterTry(outcome: Outcome, tries: number, jitter: number): Delivery {
  const { said } = outcome;
  if (outcome.is === 'accepted') return { is: 'delivered', tries, said };
  if (outcome.is === 'refused') return { is: 'givenUp', tries, because: 'refused', said };
  const waitS = waitAfter(tries, jitter);
  if (waitS === null) return { is: 'givenUp', tries, because: 'triesUsedUp', said };
  const askedS = Math.min(outcome.notBeforeS ?? 0, LONGEST_ASKED_S);
  return { is: 'waiting', tries, waitS: Math.max(waitS, askedS), said };
}
