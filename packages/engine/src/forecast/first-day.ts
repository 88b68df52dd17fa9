/** Probability by days ahead, not necessarily rising; asked for once per day. */
export type ChanceByDay = {
  /** raw probability, cached by whoever gives it */
  chance(ahead: number): number;
  /** days ahead between which it is looked up, ascending, first 0, last the horizon */
  checkpoints: readonly number[];
};

/**
 * Running maximum of a probability over the days until `ahead`, and the first day on which it reaches p.
 * Both walk the same bisection between checkpoints, so that the maximum never falls and
 * `firstDayWith(p) <= h` exactly when `runningChance(h) >= p`.
 *
 * Source: own method.
 */
export function runningChance({ chance, checkpoints }: ChanceByDay, ahead: number): number {
  let before = 0;
  let lower = chance(checkpoints[0] as number);
  if (ahead <= 0) return lower;
  for (const checkpoint of checkpoints) {
    const upper = Math.max(lower, chance(checkpoint));
    if (checkpoint === ahead) return upper;
    if (checkpoint > ahead)
      return halve(chance, [before, checkpoint], [lower, upper], (day) => day > ahead).least;
    before = checkpoint;
    lower = upper;
  }
  return lower;
}

/**
 * Halves the days between two checkpoints until the last one that is not past and the first one that is lie beside
 * each other.
 *
 * @param chances at the two days; what lies between them is held between these
 * @returns the chance of the last day that is not past, and the first one that is
 */
function halve(
  chance: (ahead: number) => number,
  [from, until]: [number, number],
  chances: [number, number],
  isPast: (day: number, chance: number) => boolean,
): { least: number; first: number } {
  let [low, high, least, most] = [from, until, ...chances];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    const value = Math.min(most, Math.max(least, chance(middle)));
    if (isPast(middle, value)) [high, most] = [middle, value];
    else [low, least] = [middle, value];
  }
  return { least, first: high };
}

/** First days ahead on which the running maximum reaches `p`; null beyond the last checkpoint. */
export function firstDayWith({ chance, checkpoints }: ChanceByDay, p: number): number | null {
  let before = 0;
  let lower = chance(checkpoints[0] as number);
  if (lower >= p) return 0;
  for (const checkpoint of checkpoints) {
    const upper = Math.max(lower, chance(checkpoint));
    if (upper >= p)
      return halve(chance, [before, checkpoint], [lower, upper], (_, value) => value >= p).first;
    before = checkpoint;
    lower = upper;
  }
  return null;
}
