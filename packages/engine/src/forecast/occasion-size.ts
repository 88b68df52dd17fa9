import type { AmountMeasure, UseClass } from '../log/item.ts';

/** What an occasion amounts to where nothing is known of any. Simulated, common practice. */
const PRIOR_OCCASION = {
  km: { useClass: 'circuit', amount: 160 },
  hours: { useClass: 'circuit', amount: 1.6 },
  sessions: { useClass: 'circuit', amount: 4 },
  launches: { useClass: 'strip', amount: 6 },
} as const;
/** Weight and squared relative spread of the prior on an occasion's size. */
const SIZE_PRIOR = { weight: 3, spread2: 0.35 ** 2 };
/** Mean weighted amount of an occasion, and its squared relative spread; 0: there are none. */
export type OccasionSize = { mean: number; spread2: number };

/**
 * @param sizes weighted amounts of the occasions logged and planned, > 0
 * @param weightOf weight of a class
 */
export function occasionSize(
  sizes: readonly number[],
  measure: AmountMeasure,
  weightOf: (useClass: UseClass) => number,
): OccasionSize {
  const mean =
    sizes.length > 0
      ? sizes.reduce((sum, size) => sum + size, 0) / sizes.length
      : priorOccasion(measure, weightOf);
  return { mean, spread2: spread2(sizes, mean) };
}

function priorOccasion(measure: AmountMeasure, weightOf: (useClass: UseClass) => number): number {
  const onRoadToo = measure === 'km' || measure === 'hours';
  if (onRoadToo && weightOf('road') > 0) return 0;
  const { useClass, amount } = PRIOR_OCCASION[measure];
  return amount * weightOf(useClass);
}

function spread2(sizes: readonly number[], mean: number): number {
  if (mean <= 0) return 0;
  const squares = sizes.reduce((sum, size) => sum + (size / mean - 1) ** 2, 0);
  return (SIZE_PRIOR.weight * SIZE_PRIOR.spread2 + squares) / (SIZE_PRIOR.weight + sizes.length);
}
