// What other roads lead to the same figures: plain sums, and numerical integration.

/** Poisson probabilities 0..last, by the ratio of neighbours from the mode outwards: nothing underflows. */
export function poisson(mean: number, last: number): number[] {
  const mode = Math.min(last, Math.floor(mean));
  const terms = Array.from({ length: last + 1 }, () => 0);
  terms[mode] = 1;
  for (let k = mode + 1; k <= last; k += 1) terms[k] = ((terms[k - 1] as number) * mean) / k;
  for (let k = mode - 1; k >= 0; k -= 1) terms[k] = ((terms[k + 1] as number) * (k + 1)) / mean;
  let beyond = 0;
  let term = terms[last] as number;
  for (let k = last + 1; term > 1e-18 || k < mean; k += 1) {
    term *= mean / k;
    beyond += term;
  }
  const whole = terms.reduce((sum, it) => sum + it, 0) + beyond;
  return terms.map((it) => it / whole);
}

export const sum = (list: readonly number[]) => list.reduce((total, it) => total + it, 0);

/** Simpson's rule with 20,000 steps. */
export function simpson(f: (t: number) => number, from: number, until: number): number {
  const steps = 20_000;
  const width = (until - from) / steps;
  let total = f(from) + f(until);
  for (let i = 1; i < steps; i += 1) total += (i % 2 === 1 ? 4 : 2) * f(from + i * width);
  return (total * width) / 3;
}
