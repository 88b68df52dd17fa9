/**
 * Draws of independent standard normal variables that fill their space evenly: an additive recurrence from a
 * seed, turned by Box and Muller. Means over n of them close in like 1/n, not like 1/sqrt(n).
 *
 * Source: the recurrence by powers of the root of g^(m+1) = g + 1, a quasi-Monte Carlo rule; G. E. P. Box,
 * M. E. Muller, A note on the generation of random normal deviates (1958).
 *
 * @param dimensions even
 */
export function evenDraws(dimensions: number, seed: number): () => Float64Array {
  let root = 1.5;
  for (let i = 0; i < 60; i += 1) root = (1 + root) ** (1 / (dimensions + 1));
  const steps = Array.from({ length: dimensions }, (_, i) => root ** -(i + 1) % 1);
  const at = Float64Array.from({ length: dimensions }, (_, i) => (seed * (i + 1)) % 1);
  const out = new Float64Array(dimensions);
  return () => {
    for (let i = 0; i < dimensions; i += 1) at[i] = ((at[i] as number) + (steps[i] as number)) % 1;
    for (let i = 0; i < dimensions; i += 2) {
      const radius = Math.sqrt(-2 * Math.log(1 - (at[i] as number)));
      const angle = 2 * Math.PI * (at[i + 1] as number);
      out[i] = radius * Math.cos(angle);
      out[i + 1] = radius * Math.sin(angle);
    }
    return out;
  };
}
