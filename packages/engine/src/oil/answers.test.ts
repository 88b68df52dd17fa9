import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  belowMin,
  cdfOf,
  levelAnswer,
  type Mixture,
  quantileOf,
  ROAD_RATE,
  rateAnswer,
} from './answers.ts';
import { makeBank } from './bank.ts';
import { distanceToMin, FARTHEST_KM } from './distance-to-min.ts';
import { ROAD, SIZE, USUAL_PRIORS } from './hypothesis.ts';

const Z95 = 1.6448536269514726;

/** One hypothesis alone, with that level and rate. */
function bankOf(levelL: number, sdL: number, rate: number, sdLog: number) {
  const bank = makeBank(1, USUAL_PRIORS);
  const [base] = bank.slots;
  if (base === undefined) throw new Error('a base is needed');
  base.x[0] = levelL;
  base.p[0] = sdL * sdL;
  base.x[ROAD] = Math.log(rate);
  base.p[ROAD * SIZE + ROAD] = sdLog * sdLog;
  return bank;
}

describe('quantileOf()', () => {
  const mixtures = fc
    .array(
      fc.record({
        weight: fc.double({ min: 0.01, max: 1, noNaN: true }),
        mean: fc.double({ min: -5, max: 5, noNaN: true }),
        sd: fc.double({ min: 1e-4, max: 3, noNaN: true }),
      }),
      { minLength: 1, maxLength: 7 },
    )
    .map((all): Mixture => {
      const whole = all.reduce((sum, { weight }) => sum + weight, 0);
      return all.map((one) => ({ ...one, weight: one.weight / whole }));
    });

  it('is where the distribution reaches q, of any mixture', () => {
    fc.assert(
      fc.property(mixtures, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (mixture, q) => {
        const at = quantileOf(mixture, q);
        expect(cdfOf(mixture, at - 1e-9)).toBeLessThanOrEqual(q + 1e-10);
        expect(cdfOf(mixture, at + 1e-9)).toBeGreaterThanOrEqual(q - 1e-10);
      }),
    );
  });

  it('is the plain one of a single Gaussian', () => {
    expect(quantileOf([{ weight: 1, mean: 2, sd: 0.5 }], 0.95)).toBeCloseTo(2 + 0.5 * Z95, 9);
  });
});

describe('levelAnswer(), rateAnswer() and belowMin()', () => {
  const bank = bankOf(-0.6, 0.2, 0.3, 0.4);

  it('are those of one Gaussian where there is one', () => {
    const level = levelAnswer(bank);
    expect(level.p05).toBeCloseTo(-0.6 - 0.2 * Z95, 9);
    expect([level.p50, level.mean]).toEqual([expect.closeTo(-0.6, 9), expect.closeTo(-0.6, 9)]);
    expect(level.sd).toBeCloseTo(0.2, 9);
    // two standard deviations above MIN
    expect(belowMin(bank)).toBeCloseTo(0.022750131948179, 12);
  });

  it('are log-normal for a rate: its mean lies above its median', () => {
    const rate = rateAnswer(bank, ROAD_RATE);
    expect(rate.median).toBeCloseTo(0.3, 9);
    expect(rate.p95).toBeCloseTo(0.3 * Math.exp(0.4 * Z95), 8);
    expect(rate.mean).toBeCloseTo(0.3 * Math.exp(0.08), 9);
    expect(rate.sdLog).toBeCloseTo(0.4, 9);
  });
});

describe('distanceToMin()', () => {
  it('is what is left over the rate, where both are known', () => {
    const { p50 } = distanceToMin(bankOf(-0.4, 1e-3, 0.2, 1e-4), ROAD_RATE);
    // given the litres used, their dose makes the distribution wide but hardly shifts its middle
    expect(p50).toBeCloseTo(3000, 0);
  });

  it('is sooner, never later, when it could be: by more the less is known', () => {
    const [sure, unsure] = [0.1, 0.6].map((sdLog) =>
      distanceToMin(bankOf(-0.4, 0.1, 0.2, sdLog), ROAD_RATE),
    );
    expect(sure?.p05).toBeLessThan(sure?.p50 ?? 0);
    expect(unsure?.p05).toBeLessThan(sure?.p05 ?? 0);
  });

  it('solves P(d) = Phi((d r - left)/sqrt(v + 0.015 d r)) for a rate that is known', () => {
    const [left, sd, rate] = [0.5, 0.1, 0.25];
    const { p05 } = distanceToMin(bankOf(left - 1, sd, rate, 1e-5), ROAD_RATE);
    const used = (p05 / 1000) * rate;
    expect((used - left) / Math.sqrt(sd * sd + 0.015 * used)).toBeCloseTo(-Z95, 4);
  });

  it('is 0 where it may be there already, and the farthest where it never gets there', () => {
    expect(distanceToMin(bankOf(-0.95, 0.1, 0.2, 0.3), ROAD_RATE).p05).toBe(0);
    expect(distanceToMin(bankOf(-0.4, 0.1, 1e-6, 0.3), ROAD_RATE)).toEqual({
      p05: FARTHEST_KM,
      p50: FARTHEST_KM,
    });
  });
});
