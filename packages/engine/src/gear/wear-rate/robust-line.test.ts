import { describe, expect, it } from 'vitest';
import { kendallVariance, mannKendall } from './mann-kendall.ts';
import { robustLine } from './robust-line.ts';
import { theilSen } from './theil-sen.ts';

const sd = 0.2;
const at = (...values: [use: number, value: number][]) =>
  values.map(([use, value]) => ({ use, value, sd }));

describe('robustLine()', () => {
  it('goes through two points, and knows its slope as well as they repeat', () => {
    // slope variance = sd^2 / sum w (u - mean)^2; weights 1/2 and 1, mean 20/3: 0.5 x 44.4 + 11.1 = 33.3
    const line = robustLine(at([0, 10], [10, 8]));
    expect(line?.slope).toBeCloseTo(-0.2, 12);
    expect(line?.centreUse).toBeCloseTo(20 / 3, 12);
    expect(line?.slopeVariance).toBeCloseTo(0.04 / (100 / 3), 12);
    expect(line?.degrees).toBe(4);
  });

  it('is hardly moved by one bad measurement', () => {
    const good = at([0, 10], [4, 9], [8, 8], [12, 7], [16, 6]);
    const bad = good.map((point) => (point.use === 8 ? { ...point, value: 3 } : point));
    expect(robustLine(good)?.slope).toBeCloseTo(-0.25, 9);
    expect(Math.abs((robustLine(bad)?.slope ?? 0) + 0.25)).toBeLessThan(0.02);
    expect(robustLine(bad)?.slopeVariance).toBeGreaterThan(
      2 * (robustLine(good)?.slopeVariance ?? 0),
    );
  });

  it('leans on the newer ones where wear has changed', () => {
    // 0.1 a unit at first, 0.4 at the end; all alike would give 0.25
    const slope = robustLine(at([0, 10], [5, 9.5], [10, 9], [15, 7], [20, 5]))?.slope ?? 0;
    expect(slope).toBeLessThan(-0.26);
    expect(slope).toBeGreaterThan(-0.4);
  });

  it('is none where use is the same in all', () => {
    expect(robustLine(at([3, 10], [3, 8]))).toBeNull();
    expect(robustLine([])).toBeNull();
  });
});

describe('theilSen()', () => {
  it('gives no interval where so few points cannot', () => {
    expect(theilSen(at([0, 10], [10, 8]), 0.8)).toMatchObject({ slope: -0.2, interval: null });
    expect(theilSen(at([0, 10], [4, 9], [8, 8.5]), 0.8)?.interval).toBeNull();
  });

  it('takes the middle slope, leaving out pairs at the same use', () => {
    // slopes -0.5, -0.5, -0.375, -0.25, -0.25
    const { slope } = theilSen(at([0, 10], [4, 9], [4, 8], [8, 7]), 0.8) ?? {};
    expect(slope).toBeCloseTo(-0.375, 12);
  });
});

it('kendallVariance() counts ties in use and in value', () => {
  // by hand: n = 4, v(4) = 156; value ties one pair, v(2) = 18; use ties one pair, 18; (156 - 36)/18
  // + 2 x 2 / (2 x 4 x 3)
  expect(kendallVariance(at([0, 10], [4, 9], [4, 8], [8, 8]))).toBeCloseTo(120 / 18 + 4 / 24, 12);
  expect(kendallVariance(at([0, 10]))).toBe(0);
});

it('kendallVariance() is that of S over all orders of the values', () => {
  const uses = [1, 1, 1, 2, 3];
  const values = [4, 4, 4, 5, 6];
  const all = orders(values).map(
    (order) => mannKendall(uses.map((use, index) => ({ use, value: order[index] ?? 0 }))).s,
  );
  const squares = all.reduce((sum, s) => sum + s * s, 0) / all.length;
  expect(all).toHaveLength(120);
  expect(
    kendallVariance(uses.map((use, index) => ({ use, value: values[index] ?? 0 }))),
  ).toBeCloseTo(squares, 9);
});

function orders(list: readonly number[]): number[][] {
  if (list.length === 0) return [[]];
  return list.flatMap((value, at) =>
    orders(list.filter((_, index) => index !== at)).map((rest) => [value, ...rest]),
  );
}
