import { gammaTail } from '@quartermark/engine/forecast';
import {
  CIRCUIT,
  type Drive,
  driveBy,
  driveRoom,
  emptyHypothesis,
  gaussHermite,
  type Hypothesis,
  judgeStick,
  LEVEL,
  normalCdf,
  predict,
  ROAD,
  SIZE,
  STEP,
  STRIP,
  update,
} from '@quartermark/engine/oil';
import { describe, expect, it, test } from 'vitest';
import data from './data/distributions.json' with { type: 'json' };
import { evenDraws } from './even-draws.ts';
import { sum } from './exact-tails.ts';

const DRAWS = 100_000;
/** Litres, and litres squared, of consumption around 2 L. */
const CLOSE = 1e-3;

/** Lower factor L of a covariance L L', so that the members hang together. */
const FACTOR = [
  [0.12, 0, 0, 0, 0],
  [-0.05, 0.3, 0, 0, 0],
  [0.02, 0.1, 0.25, 0, 0],
  [0.01, -0.08, 0.05, 0.3, 0],
  [0.03, -0.1, 0.02, 0.04, 0.2],
];
const MEAN = [-0.3, Math.log(0.3), Math.log(3), Math.log(0.09), 0.4];

function someHypothesis(): Hypothesis {
  const h = emptyHypothesis();
  h.x.set(MEAN);
  for (let i = 0; i < SIZE; i += 1)
    for (let j = 0; j < SIZE; j += 1)
      h.p[i * SIZE + j] = sum(
        (FACTOR[i] as number[]).map((one, k) => one * (FACTOR[j]?.[k] as number)),
      );
  return h;
}

/** Mean and covariance of the state after a drive, over draws of what the rates could be. */
function drawn(drive: Drive): { mean: number[]; covariance: number[] } {
  const draw = evenDraws(6, 0.137);
  const walk = Math.sqrt(0.06 ** 2 * (drive.road + drive.circuit));
  const first = Array.from({ length: SIZE }, () => 0);
  const second = Array.from({ length: SIZE * SIZE }, () => 0);
  for (let n = 0; n < DRAWS; n += 1) {
    const z = draw();
    const off = FACTOR.map((row) => sum(row.map((one, k) => one * (z[k] as number))));
    const x = off.map((one, i) => one + (MEAN[i] as number));
    off[ROAD] = (off[ROAD] as number) + walk * (z[5] as number);
    const rate = Math.exp((x[ROAD] as number) + walk * (z[5] as number) + (x[STEP] as number));
    off[LEVEL] =
      (off[LEVEL] as number) -
      rate *
        (drive.road +
          drive.circuit * Math.exp(x[CIRCUIT] as number) +
          drive.runs * Math.exp(x[STRIP] as number));
    for (let i = 0; i < SIZE; i += 1) {
      first[i] = (first[i] as number) + (off[i] as number) / DRAWS;
      for (let j = 0; j < SIZE; j += 1)
        second[i * SIZE + j] =
          (second[i * SIZE + j] as number) + ((off[i] as number) * (off[j] as number)) / DRAWS;
    }
  }
  return {
    mean: first.map((one, i) => one + (MEAN[i] as number)),
    covariance: second.map(
      (one, at) => one - (first[Math.floor(at / SIZE)] as number) * (first[at % SIZE] as number),
    ),
  };
}

describe('driveBy()', () => {
  it.each<[string, Drive]>([
    ['the road', { road: 1.5, circuit: 0, runs: 0 }],
    ['a circuit', { road: 0, circuit: 0.6, runs: 0 }],
    ['a drag strip', { road: 0.2, circuit: 0, runs: 12 }],
    ['all of them', { road: 1, circuit: 0.4, runs: 10 }],
  ])('has the mean and the covariances of what is drawn, on %s', (_, drive) => {
    const h = someHypothesis();
    driveBy(h, drive, driveRoom());
    const { mean, covariance } = drawn(drive);
    const used = (MEAN[LEVEL] as number) - (h.x[LEVEL] as number);
    for (const [i, one] of h.x.entries())
      expect(Math.abs(one - (mean[i] as number))).toBeLessThan(CLOSE);
    for (const [at, one] of h.p.entries()) {
      // consumption comes in doses, too: variance 0.015 L of every litre
      const doses = at === 0 ? 0.015 * used : 0;
      expect(Math.abs(one - doses - (covariance[at] as number))).toBeLessThan(CLOSE);
    }
  });

  it('leaves everything as it is where nothing was driven', () => {
    const [h, before] = [someHypothesis(), someHypothesis()];
    driveBy(h, { road: 0, circuit: 0, runs: 0 }, driveRoom());
    expect(h).toEqual(before);
  });
});

describe('driveBy() and update(), the surer the rate beforehand', () => {
  const RUNS = 20;
  const RUN_L = 0.1;
  const READ = [0.47, 0.59, 0.37, 0.52, 0.68, 0.45, 0.63, 0.47];

  /** Litres a run: by the filter in ln rate, and by the plain linear one beside it. */
  function rates(sdLog: number): { log: number; linear: number } {
    const h = emptyHypothesis();
    h.x[ROAD] = Math.log(RUN_L);
    h.p[ROAD * SIZE + ROAD] = sdLog ** 2;
    const [x, p] = [Float64Array.of(0, RUN_L), Float64Array.of(0, 0, 0, (RUN_L * sdLog) ** 2)];
    const gain = new Float64Array(SIZE);
    let level = 0;
    for (const part of READ) {
      level -= 4 * part;
      driveBy(h, { road: 0, circuit: 0, runs: RUNS }, driveRoom());
      const used = RUNS * (x[1] as number);
      predict(x, p, Float64Array.of(1, -RUNS), 0, 0.015 * used, new Float64Array(2));
      update(h.x, h.p, level, 0.01, 1, gain);
      update(x, p, level, 0.01, 1, gain.subarray(0, 2));
    }
    return { log: Math.exp(h.x[ROAD] as number), linear: x[1] as number };
  }

  it.each([
    [0.1, 6e-3],
    [0.03, 1e-3],
    [0.01, 1e-4],
  ])('finds the rate of a linear filter: sd of ln rate %d, within %d', (sdLog, within) => {
    const { log, linear } = rates(sdLog);
    expect(Math.abs(linear / RUN_L - 1)).toBeGreaterThan(sdLog / 20);
    expect(Math.abs(log / linear - 1)).toBeLessThan(within);
  });
});

describe('normalCdf()', () => {
  // the sources of the quantiles stand in the data file
  it.each(Object.entries(data.normal))('is %s at its quantile', (p, z) => {
    expect(Math.abs(normalCdf(z) - Number(p))).toBeLessThan(1e-12);
    expect(Math.abs(normalCdf(-z) - (1 - Number(p)))).toBeLessThan(1e-12);
  });

  // beyond z lies half of Q(1/2, z^2/2), the incomplete gamma function, worked out by another road
  it('is half an incomplete gamma function, far into the tail', () => {
    for (let z = 0.01; z < 36; z += 0.173) {
      const beyond = gammaTail(0.5, (z * z) / 2) / 2;
      expect(Math.abs(normalCdf(z) - (1 - beyond))).toBeLessThan(1e-12);
      expect(Math.abs(normalCdf(-z) / beyond - 1)).toBeLessThan(1e-10);
    }
  });

  it('keeps to its ends', () => {
    expect(normalCdf(0)).toBe(0.5);
    expect([normalCdf(Number.NEGATIVE_INFINITY), normalCdf(Number.POSITIVE_INFINITY)]).toEqual([
      0, 1,
    ]);
  });
});

describe('gaussHermite()', () => {
  const mean = (of: (z: number) => number, n: number) =>
    sum(gaussHermite(n).map(({ node, weight }) => weight * of(node)));

  // the moments of a standard normal variable are 1 x 3 x 5 ... (k - 1), and 0 for odd k
  it.each([2, 5, 10, 15])('of %d nodes has every moment up to its degree', (n) => {
    let double = 1;
    for (let k = 0; k < 2 * n; k += 1) {
      if (k > 0 && k % 2 === 0) double *= k - 1;
      const wanted = k % 2 === 0 ? double : 0;
      expect(Math.abs(mean((z) => z ** k, n) - wanted) / double).toBeLessThan(1e-11);
    }
    expect(mean((z) => z ** (2 * n), n)).not.toBeCloseTo(double * (2 * n - 1), 3);
  });

  // Abramowitz and Stegun 7.4.6: the mean of cos(t z) is exp(-t^2/2); log-normal: of exp(s z), exp(s^2/2)
  it.each([0.3, 1, 2])('of 15 nodes has the means of cos and exp at %d', (t) => {
    expect(mean((z) => Math.cos(t * z), 15)).toBeCloseTo(Math.exp((-t * t) / 2), 8);
    expect(mean((z) => Math.exp(t * z), 15) / Math.exp((t * t) / 2)).toBeCloseTo(1, 5);
  });
});

/** Oil grows by 0.0007 of its volume per degree; the two examples as printed in engineering tables. */
test.each([
  { litres: 100, fromC: 20, toC: 40, growsL: 1.4 },
  { litres: 200, fromC: 20, toC: 70, growsL: 7 },
])('judgeStick() lets $litres L grow by $growsL L from $fromC to $toC degrees', (one) => {
  const car = { spanL: 1, capacityL: one.litres, drySump: false };
  const cold = judgeStick(
    { ...car, procedure: { state: 'cold' } },
    { state: 'hotStopped', oilTempC: one.toC },
  );
  expect(cold.is).toBe('corrected');
  expect(cold.correctionL).toBeCloseTo(-one.growsL, 12);
});
