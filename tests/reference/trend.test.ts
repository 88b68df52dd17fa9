import { mannKendall, normalQuantile, studentQuantile, theilSen } from '@quartermark/engine/gear';
import { expect, test } from 'vitest';
import figures from './data/trend.json' with { type: 'json' };

/** Sources stand in the data file beside the figures. */
const { values, published, recomputed, quantiles } = figures;
const points = values.map((value, use) => ({ use, value }));

test('mannKendall() counts the published example, ties and all', () => {
  const { s, variance, z, pOneSided } = mannKendall(points);
  expect(s).toBe(published.S);
  expect(variance).toBeCloseTo(recomputed.variance, 9);
  expect(z).toBeCloseTo(recomputed.Z, 9);
  expect(z).toBeCloseTo(published.Z, 4);
  expect(pOneSided).toBeCloseTo(recomputed.pOneSided, 7);
  expect(pOneSided).toBeCloseTo(published.pOneSided, 4);
});

test.each([
  [0.8, recomputed.interval80],
  [0.95, recomputed.interval95],
])(
  'theilSen() holds the interval of scipy at %d, at most one slope wider',
  (confidence, wanted) => {
    const found = theilSen(points, confidence);
    expect(found?.slope).toBeCloseTo(recomputed.slope, 9);
    expect(found?.intercept).toBeCloseTo(recomputed.intercept, 9);
    const slopes = points
      .flatMap((a, at) => points.slice(at + 1).map((b) => (b.value - a.value) / (b.use - a.use)))
      .sort((a, b) => a - b);
    const rank = (slope = Number.NaN) =>
      slopes.reduce(
        (best, it, at) =>
          Math.abs(it - slope) < Math.abs((slopes[best] ?? 0) - slope) - 1e-9 ? at : best,
        0,
      );
    const [low, high] = wanted;
    expect(found?.interval?.low).toBeLessThanOrEqual((low ?? 0) + 1e-9);
    expect(found?.interval?.high).toBeGreaterThanOrEqual((high ?? 0) - 1e-9);
    expect(rank(low) - rank(found?.interval?.low)).toBeLessThanOrEqual(2);
    expect(rank(found?.interval?.high) - rank(high)).toBeLessThanOrEqual(2);
  },
);

test.each(quantiles.normal)('normalQuantile(%d) is %d', (p, z) => {
  expect(normalQuantile(p ?? 0)).toBeCloseTo(z ?? 0, 5);
});

test.each(quantiles.student90)('studentQuantile() at 0.9 with %d degrees is %d', (degrees, t) => {
  expect(Math.abs(studentQuantile(0.9, degrees ?? 0) - (t ?? 0))).toBeLessThan(0.001);
});
