import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { predict, update } from './filter.ts';
import { type Moved, smooth } from './smoother.ts';

const hundredths = (min: number, max: number) => fc.integer({ min, max }).map((one) => one / 100);

/** What happens to a level and two rates, in so many parts: what a step does, and figures for it. */
const parts = fc.array(
  fc.record({
    does: fc.constantFrom('drive', 'drive', 'read', 'read', 'absorb', 'fill'),
    a: hundredths(20, 200),
    b: hundredths(-100, 100),
  }),
  { minLength: 1, maxLength: 14, size: 'max' },
);
type Part = { does: string; a: number; b: number };

const N = 3;
const PRIOR = [1, 0.5, 0.3];

/** By the filter and the smoother. */
function smoothed(all: readonly Part[]): { mean: number; sd: number }[] {
  const x = new Float64Array(N);
  const p = new Float64Array(N * N);
  PRIOR.forEach((variance, i) => {
    p[i * N + i] = variance;
  });
  const steps = all.map(({ does, a, b }): Moved => {
    const after = () => ({ x: x.slice(), p: p.slice() });
    if (does === 'drive') {
      const row = Float64Array.of(1, -a, -b);
      predict(x, p, row, 0, 0.1 * a, new Float64Array(N));
      return { did: 'predict', row, ...after() };
    }
    if (does === 'read') {
      const gain = new Float64Array(N);
      const v = b - (x[0] as number);
      const f = update(x, p, b, a, 1, gain);
      return { did: 'update', v, f, gain, weight: 1, ...after() };
    }
    if (does === 'fill') {
      set(x, p, 0, b, a);
      return { did: 'reset', member: 0, ...after() };
    }
    x[1] = (x[1] as number) + (x[2] as number);
    for (let j = 0; j < N; j += 1) p[N + j] = (p[N + j] as number) + (p[2 * N + j] as number);
    for (let i = 0; i < N; i += 1)
      p[i * N + 1] = (p[i * N + 1] as number) + (p[i * N + 2] as number);
    set(x, p, 2, b, a);
    return { did: 'absorb', from: 2, into: 1, ...after() };
  });
  return smooth(steps);
}

function set(x: Float64Array, p: Float64Array, i: number, mean: number, variance: number): void {
  x[i] = mean;
  for (let j = 0; j < N; j += 1) {
    p[i * N + j] = 0;
    p[j * N + i] = 0;
  }
  p[i * N + i] = variance;
}

/**
 * By another road: everything that was ever drawn is a member of one long vector that stands still, each level a
 * sum over it, each reading a condition on it.
 */
function conditioned(all: readonly Part[]): { mean: number; sd: number }[] {
  const size = N + all.length;
  const mean = Array.from({ length: size }, () => 0);
  const covariance = Array.from({ length: size }, () => Array.from({ length: size }, () => 0));
  const draw = (i: number, of: number, variance: number) => {
    mean[i] = of;
    (covariance[i] as number[])[i] = variance;
  };
  const own = (i: number): number[] => Array.from({ length: size }, (_, at) => (at === i ? 1 : 0));
  const plus = (a: number[], b: number[], by = 1) => a.map((one, i) => one + by * (b[i] as number));
  const dot = (a: readonly number[], b: readonly number[]) =>
    a.reduce((sum, one, i) => sum + one * (b[i] as number), 0);
  PRIOR.forEach((variance, i) => {
    draw(i, 0, variance);
  });
  all.forEach(({ does, a, b }, at) => {
    if (does !== 'read') draw(N + at, does === 'drive' ? 0 : b, does === 'drive' ? 0.1 * a : a);
  });
  let [level, rate, step] = [own(0), own(1), own(2)];
  const levels = all.map(({ does, a, b }, at) => {
    if (does === 'drive') level = plus(plus(plus(level, rate, -a), step, -b), own(N + at));
    else if (does === 'fill') level = own(N + at);
    else if (does === 'absorb') [rate, step] = [plus(rate, step), own(N + at)];
    else {
      const along = covariance.map((row) => dot(row, level));
      const f = dot(along, level) + a;
      const v = b - dot(mean, level);
      along.forEach((k, i) => {
        mean[i] = (mean[i] as number) + (k * v) / f;
        along.forEach((other, j) => {
          (covariance[i] as number[])[j] = (covariance[i]?.[j] as number) - (k * other) / f;
        });
      });
    }
    return level;
  });
  return levels.map((one) => ({
    mean: dot(mean, one),
    sd: Math.sqrt(
      Math.max(
        0,
        dot(
          covariance.map((row) => dot(row, one)),
          one,
        ),
      ),
    ),
  }));
}

describe('smooth()', () => {
  it('is what all readings together say of every level, whatever happened between them', () => {
    fc.assert(
      fc.property(parts, (all) => {
        const [found, wanted] = [smoothed(all), conditioned(all)];
        expect(found).toHaveLength(all.length);
        found.forEach(({ mean, sd }, at) => {
          expect(mean).toBeCloseTo(wanted[at]?.mean ?? Number.NaN, 9);
          expect(sd).toBeCloseTo(wanted[at]?.sd ?? Number.NaN, 7);
        });
      }),
      { numRuns: 300 },
    );
  });

  it('has nothing to say of no steps', () => {
    expect(smooth([])).toEqual([]);
  });
});
