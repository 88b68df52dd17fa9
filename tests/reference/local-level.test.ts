import { type Moved, predict, smooth, update } from '@quartermark/engine/oil';
import { describe, expect, it } from 'vitest';
import nile from './data/nile.json' with { type: 'json' };
import { denseLocalLevel } from './dense-gaussian.ts';

// Sources stand in the data file beside the figures.

/** A forward pass over the yearly flow of the Nile, with a record of each step for the smoother. */
function pass(kappa: number) {
  const x = new Float64Array(1);
  const p = Float64Array.of(kappa);
  const gain = new Float64Array(1);
  const steps: Moved[] = [];
  const readAt: number[] = [];
  const terms: number[] = [];
  const filtered: { mean: number; variance: number }[] = [];
  nile.values.forEach((value, at) => {
    if (at > 0) {
      predict(x, p, Float64Array.of(1), 0, nile.variances.level, new Float64Array(1));
      steps.push({ did: 'predict', row: Float64Array.of(1), x: x.slice(), p: p.slice() });
    }
    const v = value - (x[0] as number);
    const f = update(x, p, value, nile.variances.observation, 1, gain);
    terms.push(-0.5 * (Math.log(2 * Math.PI * f) + (v * v) / f));
    readAt.push(steps.length);
    steps.push({ did: 'update', v, f, gain: gain.slice(), weight: 1, x: x.slice(), p: p.slice() });
    filtered.push({ mean: x[0] as number, variance: p[0] as number });
  });
  const all = smooth(steps);
  return { filtered, terms, smoothed: readAt.map((at) => all[at] ?? { mean: Number.NaN, sd: 0 }) };
}

const sum = (list: readonly number[]) => list.reduce((total, one) => total + one, 0);
const relative = (found: number, wanted: number) => Math.abs(found - wanted) / Math.abs(wanted);

describe('predict(), update() and smooth() over the yearly flow of the Nile', () => {
  it('are the conditional moments of one long Gaussian vector, at a prior variance of 1e6', () => {
    const exact = denseLocalLevel(nile.values, nile.variances, 1e6);
    const { filtered, terms, smoothed } = pass(1e6);
    const [last, first] = [filtered.at(-1), smoothed[0]];
    expect(relative(sum(terms), exact.logLikelihood)).toBeLessThan(1e-8);
    expect(relative(last?.mean ?? 0, exact.last.mean)).toBeLessThan(1e-8);
    expect(relative(last?.variance ?? 0, exact.last.variance)).toBeLessThan(1e-8);
    expect(relative(first?.mean ?? 0, exact.first.mean)).toBeLessThan(1e-8);
    expect(relative((first?.sd ?? 0) ** 2, exact.first.variance)).toBeLessThan(1e-8);
  });

  it('have the log-likelihood printed for a prior variance of 1e7', () => {
    expect(relative(sum(pass(1e7).terms), nile.logLikelihood.kappa1e7)).toBeLessThan(1e-8);
  });

  describe('when next to nothing is known beforehand', () => {
    const { filtered, terms, smoothed } = pass(1e11);

    it('have the published log-likelihood without the first year', () => {
      const found = sum(terms.slice(1));
      expect(Math.abs(found - nile.logLikelihood.exactDiffuseWithoutFirst)).toBeLessThan(1e-3);
      expect(found).toBeCloseTo(-632.5456, 3);
    });

    it('end at the published level and variance', () => {
      expect(filtered.at(-1)?.mean).toBeCloseTo(798.3703, 3);
      expect(filtered.at(-1)?.variance).toBeCloseTo(4032.1579, 3);
    });

    it('meet the level of every year, in the light of what came before and of all of it', () => {
      expect(smoothed[0]?.mean).toBeCloseTo(1111.668, 2);
      nile.values.forEach((_, year) => {
        const [now, all] = [filtered[year], smoothed[year]];
        expect(Math.abs((now?.mean ?? 0) - (nile.filtered[year] ?? 0))).toBeLessThan(1e-3);
        expect(Math.abs((all?.mean ?? 0) - (nile.smoothed[year] ?? 0))).toBeLessThan(1e-3);
        expect(relative(now?.variance ?? 0, nile.filteredVariance[year] ?? 0)).toBeLessThan(1e-5);
        expect(relative((all?.sd ?? 0) ** 2, nile.smoothedVariance[year] ?? 0)).toBeLessThan(1e-5);
      });
    });
  });
});
