import { normalCdf } from './normal.ts';

/**
 * The value below which a standard normal lies with probability p, found by halving.
 *
 * @param p between 0 and 1, both excluded
 * @throws RangeError outside of that
 * @example normalQuantile(0.9) // 1.2816
 */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1))
    throw new RangeError(`could not give a quantile: ${p}, it should lie between 0 and 1`);
  let low = -9;
  let high = 9;
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    if (normalCdf(middle) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * The value below which Student's t lies with probability p.
 *
 * Formula: the normal quantile z corrected to the third power of 1/degrees,
 * z + (z^3 + z) / 4d + (5z^5 + 16z^3 + 3z) / 96d^2 + (3z^7 + 19z^5 + 17z^3 - 15z) / 384d^3; within 0.001
 * at p = 0.9 from 4 degrees up.
 * p: between 0 and 1; degrees: 4 or more. Errors: RangeError outside.
 * Source: M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 26.7.5.
 * @example studentQuantile(0.9, 4) // 1.533
 */
export function studentQuantile(p: number, degrees: number): number {
  if (!(degrees >= 4))
    throw new RangeError(`could not give a quantile: ${degrees} degrees, should be 4 or more`);
  const z = normalQuantile(p);
  const first = (z ** 3 + z) / 4;
  const second = (5 * z ** 5 + 16 * z ** 3 + 3 * z) / 96;
  const third = (3 * z ** 7 + 19 * z ** 5 + 17 * z ** 3 - 15 * z) / 384;
  return z + first / degrees + second / degrees ** 2 + third / degrees ** 3;
}
