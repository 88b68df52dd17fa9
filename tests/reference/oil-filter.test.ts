import { predict, update } from '@quartermark/engine/oil';
import { describe, expect, it } from 'vitest';
import figures from './data/least-squares.json' with { type: 'json' };
import { exactLeastSquares } from './exact-least-squares.ts';

// Sources stand in the data file beside the figures. A tank that is drained by x at a constant rate, and whose
// level is read, is a straight line through least squares; so the filter's two steps must find it.

const relative = (found: number, wanted: number) => Math.abs(found - wanted) / Math.abs(wanted);

/** A filter over a level and rates nothing is known of: variance `kappa`, no noise but what is read. */
class Tank {
  readonly x: Float64Array;
  readonly p: Float64Array;
  /** sum of v^2/F over what was read */
  squares = 0;
  readonly #gain: Float64Array;

  constructor(
    readonly rates: number,
    kappa: number,
    levelVariance: number,
  ) {
    const n = rates + 1;
    this.x = new Float64Array(n);
    this.p = new Float64Array(n * n);
    this.#gain = new Float64Array(n);
    for (let i = 1; i < n; i += 1) this.p[i * n + i] = kappa;
    this.p[0] = levelVariance;
  }

  /** Fills it to exactly 0: the rates are all that is kept. */
  fill(): void {
    const n = this.x.length;
    this.x[0] = 0;
    for (let i = 0; i < n; i += 1) {
      this.p[i] = 0;
      this.p[i * n] = 0;
    }
  }

  drain(...by: number[]): void {
    const row = Float64Array.from([1, ...by.map((amount) => -amount)]);
    predict(this.x, this.p, row, 0, 0, new Float64Array(this.x.length));
  }

  read(level: number): void {
    const v = level - (this.x[0] as number);
    const f = update(this.x, this.p, level, 1, 1, this.#gain);
    this.squares += (v * v) / f;
  }

  variance(i: number): number {
    return this.p[i * this.x.length + i] as number;
  }
}

describe('predict() and update() through the origin', () => {
  // the prior adds b^2/kappa to the squares: with only three points it has to be wider
  it.each([
    ['noint1', 1e6],
    ['noint2', 1e8],
  ] as const)('meet the certified values of NIST %s', (name, kappa) => {
    const { y, x, coefficients, standardDeviations, ...set } = figures[name];
    const tank = new Tank(1, kappa, 0);
    y.forEach((one, at) => {
      tank.fill();
      tank.drain(x[at] as number);
      tank.read(-one);
    });
    const residual = Math.sqrt(tank.squares / set.degreesOfFreedom);
    const sd = residual * Math.sqrt(tank.variance(1));
    expect(relative(tank.x[1] as number, coefficients[0] as number)).toBeLessThan(1e-7);
    expect(relative(sd, standardDeviations[0] as number)).toBeLessThan(1e-7);
    expect(relative(residual, set.residualStandardDeviation)).toBeLessThan(1e-7);
  });

  // thousands of road km, circuit km: whole numbers, so that the other road is exact
  const amounts = [
    [12, 0],
    [7, 3],
    [25, 1],
    [3, 9],
    [18, 4],
    [9, 0],
    [31, 12],
    [2, 5],
    [14, 7],
    [22, 2],
  ];
  const used = [31, 48, 71, 103, 90, 21, 212, 60, 118, 79];

  it('find two rates at once as exact least squares does', () => {
    const exact = exactLeastSquares(amounts, used);
    const tank = new Tank(2, 1e8, 0);
    amounts.forEach((row, at) => {
      tank.fill();
      tank.drain(...row);
      tank.read(-(used[at] as number));
    });
    for (const i of [0, 1]) {
      expect(relative(tank.x[i + 1] as number, exact.b[i] as number)).toBeLessThan(1e-8);
      // the variances are left over from figures of the size of kappa
      expect(relative(tank.variance(i + 1), exact.inverse[i] as number)).toBeLessThan(1e-7);
    }
    expect(relative(tank.squares, exact.squares)).toBeLessThan(1e-7);
  });
});

describe('predict() and update() of one tank that is never filled', () => {
  it('meet the certified values of NIST Norris', () => {
    const { y, x, coefficients, standardDeviations, ...set } = figures.norris;
    const sorted = x
      .map((at, i) => ({ at, read: y[i] as number }))
      .toSorted((a, b) => a.at - b.at || a.read - b.read);
    const tank = new Tank(1, 1e8, 1e8);
    let before = sorted[0]?.at as number;
    for (const { at, read } of sorted) {
      tank.drain(at - before);
      tank.read(read);
      before = at;
    }
    const [level, rate] = tank.x as unknown as [number, number];
    const [p00, p01, , p11] = tank.p as unknown as [number, number, number, number];
    const residual = Math.sqrt(tank.squares / set.degreesOfFreedom);
    const intercept = level + rate * before;
    const interceptSd = residual * Math.sqrt(p00 + 2 * before * p01 + before * before * p11);
    const [b0, b1] = coefficients as [number, number];
    const [sd0, sd1] = standardDeviations as [number, number];
    expect(relative(-rate, b1)).toBeLessThan(1e-8);
    expect(relative(intercept, b0)).toBeLessThan(1e-8);
    expect(relative(residual, set.residualStandardDeviation)).toBeLessThan(1e-8);
    expect(relative(interceptSd, sd0)).toBeLessThan(1e-8);
    expect(relative(residual * Math.sqrt(p11), sd1)).toBeLessThan(1e-8);
  });
});

describe('update() with a share of gross errors', () => {
  it('has the exact moments of a mixture in which an outlier tells nothing', () => {
    const [x, p] = [Float64Array.from([1, 0.5]), Float64Array.from([2, 0.6, 0.6, 0.4])];
    const [y, r, share] = [3.5, 0.5, 0.3];
    const gain = new Float64Array(2);
    // by the law of total variance over "sound" and "tells nothing"
    const full = { x: x.slice(), p: p.slice() };
    update(full.x, full.p, y, r, 1, gain);
    const mean = [0, 1].map((i) => share * (full.x[i] as number) + (1 - share) * (x[i] as number));
    const covariance = [0, 1, 2, 3].map((at) => {
      const [i, j] = [at >> 1, at & 1];
      const spread = (one: Float64Array) =>
        ((one[i] as number) - (mean[i] as number)) * ((one[j] as number) - (mean[j] as number));
      return (
        share * ((full.p[at] as number) + spread(full.x)) +
        (1 - share) * ((p[at] as number) + spread(x))
      );
    });
    update(x, p, y, r, share, gain);
    for (const [i, one] of x.entries()) expect(one).toBeCloseTo(mean[i] as number, 12);
    for (const [at, one] of p.entries()) expect(one).toBeCloseTo(covariance[at] as number, 12);
  });
});
