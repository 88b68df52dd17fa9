/**
 * Numbers in [0, 1) that are the same for the same seed: mulberry32, for cases drawn at random that have to
 * come out the same on every machine.
 *
 * Source: the public-domain generator of that name, 32 bits of state.
 */
export function seededNumbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
