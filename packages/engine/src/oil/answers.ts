import { normalCdf } from '../probability/normal.ts';
import { type Bank, hypothesesOf } from './bank.ts';
import { CIRCUIT, type Hypothesis, LEVEL, ROAD, SIZE, STEP, STRIP } from './hypothesis.ts';

/** Quantiles of a mixture, with its mean. Litres for the level, L/1,000 km or L a run for rates. */
export type Quantiles = { p05: number; p10: number; p50: number; p90: number; p95: number };
export type LevelAnswer = Quantiles & { mean: number; sd: number };
export type RateAnswer = Quantiles & { median: number; mean: number; sdLog: number };

const VARIANCE_FLOOR = 1e-9;
const HALVINGS = 80;
/** Litres, or in ln of a rate: far finer than anybody reads. */
const CLOSE = 1e-11;
const BEYOND_SD = 9;
/** A rate beyond e^10 L/1,000 km is none; its mean must stay a number. */
const EXPONENT_MAX = 10;
/** Absurd logs lead to absurd rates, but to numbers. */
const LOG_RATE_MAX = 300;
/** ln of the smallest step that counts as a rise: a quarter more. */
const LOG_RISE = Math.log(1.25);

/** A mixture of Gaussians: weights that sum to 1, means, standard deviations. */
export type Mixture = { weight: number; mean: number; sd: number }[];

export function mixtureOf(bank: Bank, members: readonly number[]): Mixture {
  return hypothesesOf(bank).map(({ x, p, logWeight }) => {
    let mean = 0;
    let variance = 0;
    for (const i of members) {
      mean += x[i] as number;
      for (const j of members) variance += p[i * SIZE + j] as number;
    }
    return { weight: Math.exp(logWeight), mean, sd: Math.sqrt(Math.max(variance, VARIANCE_FLOOR)) };
  });
}

/** Where the mixture's distribution reaches q, by bisection. */
export function quantileOf(mixture: Mixture, q: number): number {
  let low = Math.min(...mixture.map(({ mean, sd }) => mean - BEYOND_SD * sd));
  let high = Math.max(...mixture.map(({ mean, sd }) => mean + BEYOND_SD * sd));
  for (let i = 0; i < HALVINGS; i += 1) {
    const middle = (low + high) / 2;
    if (high - low < CLOSE) break;
    if (cdfOf(mixture, middle) < q) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

export function cdfOf(mixture: Mixture, at: number): number {
  let sum = 0;
  for (const { weight, mean, sd } of mixture) sum += weight * normalCdf((at - mean) / sd);
  return sum;
}

function momentsOf(mixture: Mixture): { mean: number; sd: number } {
  const mean = mixture.reduce((sum, one) => sum + one.weight * one.mean, 0);
  const second = mixture.reduce(
    (sum, one) => sum + one.weight * (one.sd * one.sd + (one.mean - mean) ** 2),
    0,
  );
  return { mean, sd: Math.sqrt(second) };
}

function quantiles(mixture: Mixture, of: (value: number) => number): Quantiles {
  return {
    p05: of(quantileOf(mixture, 0.05)),
    p10: of(quantileOf(mixture, 0.1)),
    p50: of(quantileOf(mixture, 0.5)),
    p90: of(quantileOf(mixture, 0.9)),
    p95: of(quantileOf(mixture, 0.95)),
  };
}

/** A rate from its ln. */
export function rateOf(logRate: number): number {
  return Math.exp(Math.min(logRate, LOG_RATE_MAX));
}

/** The level, litres from MAX. */
export function levelAnswer(bank: Bank): LevelAnswer {
  const mixture = mixtureOf(bank, [LEVEL]);
  return { ...momentsOf(mixture), ...quantiles(mixture, (value) => value) };
}

/** A rate from its ln: the members that add up to it. */
export function rateAnswer(bank: Bank, members: readonly number[]): RateAnswer {
  const mixture = mixtureOf(bank, members);
  const all = quantiles(mixture, rateOf);
  return {
    ...all,
    median: all.p50,
    mean: mixture.reduce(
      (sum, { weight, mean, sd }) =>
        sum + weight * Math.exp(Math.min(mean + (sd * sd) / 2, EXPONENT_MAX)),
      0,
    ),
    sdLog: momentsOf(mixture).sd,
  };
}

export const ROAD_RATE = [ROAD, STEP] as const;
export const CIRCUIT_RATE = [ROAD, CIRCUIT, STEP] as const;
export const STRIP_RATE = [ROAD, STRIP, STEP] as const;
export const BASELINE_RATE = [ROAD] as const;

/** Probability that the level is below MIN. */
export function belowMin(bank: Bank): number {
  return cdfOf(mixtureOf(bank, [LEVEL]), -bank.spanL);
}

/** Probability that the level is above so many spans over MAX. */
export function aboveMax(bank: Bank, spans: number): number {
  return 1 - cdfOf(mixtureOf(bank, [LEVEL]), spans * bank.spanL);
}

/** Probability that the rate stepped up by a quarter or more within the last 12,000 km. */
export function riseProbability({ slots, list }: Bank): number {
  let sum = 0;
  for (let at = 1; at < list.length; at += 1) {
    const { x, p, logWeight } = slots[list[at] as number] as Hypothesis;
    const variance = Math.max(p[STEP * SIZE + STEP] as number, VARIANCE_FLOOR);
    sum += Math.exp(logWeight) * normalCdf(((x[STEP] as number) - LOG_RISE) / Math.sqrt(variance));
  }
  return sum;
}
