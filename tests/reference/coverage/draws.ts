/** Numbers drawn at random, the same for the same seed on every machine. */
export type Draws = {
  /** in [0, 1) */
  even(): number;
  between(least: number, most: number): number;
  whole(least: number, most: number): number;
  chance(p: number): boolean;
  normal(): number;
  /** mean of the logarithm's exponential, and relative spread */
  lognormal(median: number, spread: number): number;
  exponential(mean: number): number;
  oneOf<T>(list: readonly T[]): T;
};

/**
 * Mulberry32 with 32 bits of state, mixed once more at the start so that neighbouring seeds differ.
 *
 * Source: the public-domain generator of that name; G. E. P. Box, M. E. Muller (1958) for the normal ones.
 */
export function draws(seed: number): Draws {
  let state = Math.imul(seed ^ (seed >>> 16), 0x45d9f3b) >>> 0;
  const even = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  const normal = () => Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even());
  return {
    even,
    between: (least, most) => least + (most - least) * even(),
    whole: (least, most) => least + Math.floor((most - least + 1) * even()),
    chance: (p) => even() < p,
    normal,
    lognormal: (median, spread) => median * Math.exp(spread * normal()),
    exponential: (mean) => -mean * Math.log(1 - even()),
    oneOf: (list) => list[Math.floor(list.length * even())] as (typeof list)[number],
  };
}
