/**
 * Counts that a binomial variable keeps to but for a chance, half of it on either side.
 *
 * @param n trials
 * @param p chance of each
 * @param outside chance of a count outside the band
 * @returns least and most count inside, both ends with it
 * Source: exact sums of binomial probabilities.
 */
export function binomialBand(n: number, p: number, outside: number): [least: number, most: number] {
  const terms: number[] = [];
  let log = n * Math.log1p(-p);
  for (let k = 0; k <= n; k += 1) {
    terms.push(Math.exp(log));
    log += Math.log((n - k) / (k + 1)) + Math.log(p) - Math.log1p(-p);
  }
  let least = 0;
  for (let sum = terms[0] as number; sum <= outside / 2; sum += terms[least] as number) least += 1;
  let most = n;
  for (let sum = terms[n] as number; sum <= outside / 2; sum += terms[most] as number) most -= 1;
  return [least, most];
}
