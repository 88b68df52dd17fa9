/** A planned event as it counts by some day. */
export type PlannedAmount = { amount: number; chance: number };

/** One way in which planned events turn out: its weight, and mean and variance of what they add up to. */
export type Outcome = { weight: number; mean: number; variance: number };

/** Relative standard deviation of what a planned event amounts to. */
const SPREAD = 0.3;
export const PLANNED_VARIANCE = SPREAD * SPREAD;
const SUBSETS_MAX = 6;
const WEIGHT_MIN = 1e-6;

/**
 * Which of the planned events take place: every subset up to six of them, by their number beyond that.
 *
 * Subset: weight = product of p (in) and 1 - p (out), mean = sum x, variance = 0.30^2 sum x^2. By number j:
 * weight, first and second moment and sum of squares over all subsets of that size, event by event.
 *
 * @param events amount > 0, chance in (0, 1]
 * @returns outcomes of weight 1e-6 and more
 * Source: exact enumeration; the moments by size follow from the Poisson binomial recursion.
 */
export function whichTakePlace(events: readonly PlannedAmount[]): Outcome[] {
  const outcomes = events.length <= SUBSETS_MAX ? bySubset(events) : byNumber(events);
  return merged(outcomes.filter(({ weight }) => weight >= WEIGHT_MIN));
}

/** Events of the same size make outcomes that add up to the same: each such sum is worked out once. */
function merged(outcomes: readonly Outcome[]): Outcome[] {
  const bySum = new Map<number, Outcome>();
  const apart: Outcome[] = [];
  for (const outcome of outcomes) {
    const same = bySum.get(outcome.mean);
    if (same === undefined) bySum.set(outcome.mean, outcome);
    else if (same.variance === outcome.variance)
      bySum.set(outcome.mean, { ...same, weight: same.weight + outcome.weight });
    else apart.push(outcome);
  }
  return [...bySum.values(), ...apart];
}

function bySubset(events: readonly PlannedAmount[]): Outcome[] {
  let outcomes: Outcome[] = [{ weight: 1, mean: 0, variance: 0 }];
  for (const { amount, chance } of events)
    outcomes = outcomes.flatMap(({ weight, mean, variance }) => {
      const goes = {
        weight: weight * chance,
        mean: mean + amount,
        variance: variance + PLANNED_VARIANCE * amount * amount,
      };
      return chance >= 1 ? [goes] : [{ weight: weight * (1 - chance), mean, variance }, goes];
    });
  return outcomes;
}

function byNumber(events: readonly PlannedAmount[]): Outcome[] {
  const size = events.length + 1;
  const weight = new Float64Array(size);
  const first = new Float64Array(size);
  const second = new Float64Array(size);
  const squares = new Float64Array(size);
  weight[0] = 1;
  const at = (list: Float64Array, j: number) => (j < 0 ? 0 : (list[j] as number));
  for (const { amount: x, chance: p } of events)
    for (let j = events.length; j >= 0; j -= 1) {
      const [w, a] = [at(weight, j - 1), at(first, j - 1)];
      second[j] = (1 - p) * at(second, j) + p * (at(second, j - 1) + 2 * x * a + x * x * w);
      squares[j] = (1 - p) * at(squares, j) + p * (at(squares, j - 1) + x * x * w);
      first[j] = (1 - p) * at(first, j) + p * (a + x * w);
      weight[j] = (1 - p) * at(weight, j) + p * w;
    }
  return Array.from(weight, (w, j) => {
    if (w <= 0) return { weight: 0, mean: 0, variance: 0 };
    const mean = at(first, j) / w;
    const between = Math.max(0, at(second, j) / w - mean * mean);
    return { weight: w, mean, variance: between + (PLANNED_VARIANCE * at(squares, j)) / w };
  });
}
