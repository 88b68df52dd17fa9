import { describe, expect, it } from 'vitest';
import type { WearLine } from './result.ts';
import { useLeft, valueAfter } from './use-left.ts';

const line: WearLine = {
  lastUse: 10,
  nowUse: 12,
  centreUse: 8,
  centreValue: 7,
  rate: 0.25,
  centreVariance: 0.01,
  rateVariance: 0.0004,
  driftPerUse: 0.02,
  reach: 1.5,
};

describe('valueAfter()', () => {
  it('goes down by the rate, and its bounds widen', () => {
    // 7 - 0.25 x 4 = 6 today; variance 0.01 + 0.0004 x 16 + 0.02 x 2 = 0.0564
    const now = valueAfter(line, 0);
    expect(now.likely).toBeCloseTo(6, 12);
    expect(now.low).toBeCloseTo(6 - 1.5 * Math.sqrt(0.0564), 12);
    const later = valueAfter(line, 8);
    expect(later.likely).toBeCloseTo(4, 12);
    expect(later.high - later.low).toBeGreaterThan(now.high - now.low);
  });

  it('never goes below nothing', () => {
    expect(valueAfter(line, 1000)).toMatchObject({ likely: 0, low: 0 });
  });
});

describe('useLeft()', () => {
  it('ends where the bounds meet the minimum', () => {
    const { likely, low, high } = useLeft(line, 3);
    expect(likely).toBeCloseTo(12, 12);
    expect(valueAfter(line, low).low).toBeCloseTo(3, 9);
    expect(valueAfter(line, high ?? 0).high).toBeCloseTo(3, 9);
    expect(low).toBeLessThan(12);
    expect(high).toBeGreaterThan(12);
  });

  it('has an open end where the rate cannot be told from nothing', () => {
    const vague = { ...line, rateVariance: 0.04 };
    const { likely, low, high } = useLeft(vague, 3);
    expect([likely, high]).toEqual([12, null]);
    expect(valueAfter(vague, low).low).toBeCloseTo(3, 9);
  });

  it('gives the least alone where no wear was seen', () => {
    const flat = { ...line, rate: 0, driftPerUse: 0 };
    const { likely, low, high } = useLeft(flat, 3);
    expect([likely, high]).toEqual([null, null]);
    expect(valueAfter(flat, low).low).toBeCloseTo(3, 9);
  });

  it('is nothing where the minimum lies inside the bounds, or above', () => {
    expect(useLeft(line, 5.9)).toMatchObject({ low: 0, likely: expect.closeTo(0.4, 9) });
    expect(useLeft(line, 6.1)).toMatchObject({ low: 0, likely: 0 });
    expect(useLeft(line, 6.1).high).toBeGreaterThan(0);
    expect(useLeft(line, 9)).toEqual({ likely: 0, low: 0, high: 0 });
  });
});
