import { normalCdf } from '../probability/normal.ts';
import { rateOf } from './answers.ts';
import { type Bank, hypothesesOf } from './bank.ts';
import { CONSUMPTION_SCALE_L } from './drive.ts';
import { LEVEL, SIZE } from './hypothesis.ts';

/** Nodes and weights of the 15-point Gauss-Hermite rule, for the standard normal density. */
const NODES = gaussHermite(15);
const WEIGHT_MIN = 1e-4;
const VARIANCE_FLOOR = 1e-6;
export const FARTHEST_KM = 100_000;
const HALVINGS = 80;
/** Thousands of km: a tenth of a millimetre. */
const CLOSE = 1e-10;
const EARLY = 0.05;
const LIKELY = 0.5;

type Path = { weight: number; level: number; rate: number; variance: number };

/**
 * Kilometres from now until the level is likely at MIN, and until it could be.
 *
 * Per hypothesis 15 Gauss-Hermite nodes in ln rate; given the rate the level is Gaussian, with 0.015 L of
 * variance per litre used on the way. P(d) = sum w Phi((-S - m + d r)/sqrt(v + 0.015 d r)).
 *
 * @param members that add up to ln of the rate (L/1,000 km)
 * @returns km, 0 where it may be there already, 100,000 where it never gets there
 * Source: Abramowitz and Stegun, 25.4.46, for the nodes; first passage by the level's distribution at d.
 */
export function distanceToMin(
  bank: Bank,
  members: readonly number[],
): { p05: number; p50: number } {
  const paths = pathsOf(bank, members);
  const all = paths.reduce((sum, { weight }) => sum + weight, 0);
  const reached = (thousandKm: number) => {
    let sum = 0;
    for (const { weight, level, rate, variance } of paths) {
      const used = thousandKm * rate;
      const spread = Math.sqrt(variance + CONSUMPTION_SCALE_L * used);
      sum += weight * normalCdf((-bank.spanL - level + used) / spread);
    }
    return sum / all;
  };
  return { p05: firstKm(reached, EARLY), p50: firstKm(reached, LIKELY) };
}

function pathsOf(bank: Bank, members: readonly number[]): Path[] {
  return hypothesesOf(bank).flatMap(({ x, p, logWeight }) => {
    const own = Math.exp(logWeight);
    if (own < WEIGHT_MIN) return [];
    let mean = 0;
    let variance = 0;
    let covariance = 0;
    for (const i of members) {
      mean += x[i] as number;
      covariance += p[i] as number;
      for (const j of members) variance += p[i * SIZE + j] as number;
    }
    const safe = Math.max(variance, 1e-9);
    const given = Math.max((p[0] as number) - (covariance * covariance) / safe, VARIANCE_FLOOR);
    const sd = Math.sqrt(safe);
    return NODES.map(({ node, weight }) => ({
      weight: own * weight,
      level: (x[LEVEL] as number) + (covariance / safe) * sd * node,
      rate: rateOf(mean + sd * node),
      variance: given,
    }));
  });
}

function firstKm(reached: (thousandKm: number) => number, q: number): number {
  if (reached(0) >= q) return 0;
  let low = 0;
  let high = FARTHEST_KM / 1000;
  if (reached(high) < q) return FARTHEST_KM;
  for (let i = 0; i < HALVINGS; i += 1) {
    const middle = (low + high) / 2;
    if (high - low < CLOSE) break;
    if (reached(middle) < q) low = middle;
    else high = middle;
  }
  return ((low + high) / 2) * 1000;
}

/**
 * Roots of the Hermite polynomial He_n by Newton's method from asymptotic guesses, with their weights: exact for
 * the mean of any polynomial of a standard normal variable up to degree 2n - 1.
 */
export function gaussHermite(n: number): { node: number; weight: number }[] {
  const found: { node: number; weight: number }[] = [];
  let z = 0;
  for (let i = 0; i < Math.ceil(n / 2); i += 1) {
    if (i === 0) z = Math.sqrt(2 * n + 1) - 1.85575 * (2 * n + 1) ** (-1 / 6);
    else if (i === 1) z -= (1.14 * n ** 0.426) / z;
    else if (i === 2) z = 1.86 * z - 0.86 * ((found[0]?.node ?? 0) / Math.SQRT2);
    else if (i === 3) z = 1.91 * z - 0.91 * ((found[1]?.node ?? 0) / Math.SQRT2);
    else z = 2 * z - (found[i - 2]?.node ?? 0) / Math.SQRT2;
    let slope = 0;
    for (let step = 0; step < 50; step += 1) {
      let h = Math.PI ** -0.25;
      let before = 0;
      for (let j = 0; j < n; j += 1) {
        const older = before;
        before = h;
        h = z * Math.sqrt(2 / (j + 1)) * before - Math.sqrt(j / (j + 1)) * older;
      }
      slope = Math.sqrt(2 * n) * before;
      const moved = h / slope;
      z -= moved;
      if (Math.abs(moved) < 1e-15) break;
    }
    found.push({ node: z * Math.SQRT2, weight: 2 / (slope * slope) / Math.sqrt(Math.PI) });
  }
  const mirrored = found.slice(0, Math.floor(n / 2)).map((one) => ({ ...one, node: -one.node }));
  return [...found, ...mirrored];
}
