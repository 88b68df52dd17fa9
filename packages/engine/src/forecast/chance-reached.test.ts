import { describe, expect, it } from 'vitest';
import { chanceReached, lookAhead, meanAhead, reachOf } from './chance-reached.ts';
import { HORIZON_DAYS } from './day-table.ts';
import { gammaTail } from './gamma-tail.ts';
import type { MeasureFit } from './measure-fit.ts';
import type { PlannedOccasion } from './planned-occasions.ts';

const perDay = (amount: number) => new Float64Array(HORIZON_DAYS + 1).map((_, day) => day * amount);
const ALL_AWAKE = perDay(1);

const NOTHING: MeasureFit = {
  now: 0,
  everyday: perDay(0),
  unplanned: perDay(0),
  occasion: 0,
  occasionSpread2: 0,
  dispersion: 0,
  weeksSeen: 52,
  occasionsSeen: 10,
  planned: [],
  everydayRate: 0,
  unreadUntil: () => 0,
};
const reach = (fit: Partial<MeasureFit>, attended: string | null = null) =>
  reachOf({ ...NOTHING, ...fit }, ALL_AWAKE, attended);

const event = (id: string, daysAhead: number[], attend = 1, days = daysAhead.length) =>
  ({
    id,
    daysAhead,
    attend,
    days,
    startAhead: daysAhead[0],
    endAhead: daysAhead.at(-1),
  }) as PlannedOccasion;

describe('lookAhead()', () => {
  // 100 days of 10: phi 30 x 1000, and (0.05 + 0.06 x 100/365.25 + 1.2/56) of the square
  it('spreads everyday use by its own spread and that of its level', () => {
    const ahead = lookAhead(reach({ now: 40, everyday: perDay(10), dispersion: 30 }), 100);
    const level = 0.05 + (0.06 * 100) / 365.25 + 1.2 / 56;
    expect(ahead.mean).toBe(1040);
    expect(ahead.variance).toBeCloseTo(30 * 1040 + level * 1040 ** 2, 6);
  });

  it('leaves out what is before a later day, and what is unread', () => {
    const fit = { now: 40, everyday: perDay(10), unplanned: perDay(0.1), occasion: 5 };
    const ahead = lookAhead(reach(fit), 100, 60);
    expect(ahead.mean).toBe(400);
    expect(ahead.unplanned).toBeCloseTo(4, 9);
  });

  it('counts the share of an event by its days, and none after a later day', () => {
    const planned = [{ event: event('a', [10, 11, 12, 13]), amount: 20 }];
    const mean = (ahead: number, after?: number) =>
      lookAhead(reach({ planned }), ahead, after).outcomes[0]?.mean;
    expect(mean(9)).toBe(0);
    expect(mean(11)).toBe(10);
    expect(mean(50)).toBe(20);
    expect(mean(50, 12)).toBe(5);
  });

  it('counts the days left of a running event alone', () => {
    const planned = [{ event: event('a', [1, 2], 1, 4), amount: 20 }];
    expect(lookAhead(reach({ planned }), 5).outcomes[0]?.mean).toBe(10);
  });

  it('takes the event asked about as certain, whatever its chance', () => {
    for (const attend of [0, 0.5, 1]) {
      const planned = [{ event: event('a', [10], attend), amount: 20 }];
      const ahead = lookAhead(reach({ planned }, 'a'), 10);
      expect(ahead).toMatchObject({ mean: 20, outcomes: [{ weight: 1, mean: 0 }] });
      expect(ahead.variance).toBeCloseTo(36, 9);
    }
  });

  it('leaves out an event that takes place with no chance at all', () => {
    const planned = [{ event: event('a', [10], 0), amount: 20 }];
    expect(lookAhead(reach({ planned }), 10).outcomes).toEqual([
      { weight: 1, mean: 0, variance: 0 },
    ]);
  });
});

describe('meanAhead()', () => {
  it('adds up everyday use, occasions and events by their chances', () => {
    const fit = {
      now: 40,
      everyday: perDay(10),
      unplanned: perDay(0.1),
      occasion: 5,
      planned: [{ event: event('a', [10], 0.9), amount: 20 }],
    };
    expect(meanAhead(reach(fit), 100)).toBeCloseTo(40 + 1000 + 50 + 18, 6);
  });
});

describe('chanceReached()', () => {
  it('is certain of nothing more to go, and never of something where nothing is used', () => {
    expect(chanceReached(reach({}), 0, 0)).toBe(1);
    expect(chanceReached(reach({}), -5, 0)).toBe(1);
    expect(chanceReached(reach({}), 1e-9, HORIZON_DAYS)).toBe(0);
  });

  it('is one gamma tail where there is everyday use alone', () => {
    const only = reach({ everyday: perDay(10), dispersion: 30 });
    const { mean, variance } = lookAhead(only, 90);
    expect(chanceReached(only, 1000, 90)).toBeCloseTo(
      gammaTail(mean ** 2 / variance, (1000 * mean) / variance),
      12,
    );
  });

  // 2 to 4 events of 6 with chances; occasions of 5 on top: written out over every outcome and count
  it('is the sum over outcomes and counts, written out', () => {
    const planned = [
      { event: event('a', [10], 0.9), amount: 6 },
      { event: event('b', [20], 0.5), amount: 9 },
    ];
    const fit = {
      planned,
      unplanned: perDay(0.05),
      occasion: 5,
      occasionSpread2: 0.1,
      occasionsSeen: 4,
    };
    const of = reach(fit);
    const spread2 = 1 / 4 + 0.05 + (0.06 * 40) / 365.25;
    const [lam, amount] = [0.05 * 40, 18];
    const outcomes = [
      [0.1 * 0.5, 0, 0],
      [0.9 * 0.5, 6, 36],
      [0.1 * 0.5, 9, 81],
      [0.9 * 0.5, 15, 117],
    ];
    let wanted = 0;
    for (const [weight = 0, sum = 0, squares = 0] of outcomes) {
      let p = (1 + lam * spread2) ** (-1 / spread2);
      for (let n = 0; n < 200; n += 1) {
        const mean = sum + 5 * n;
        const variance = 0.09 * squares + n * 25 * 0.1;
        if (mean > 0)
          wanted += weight * p * gammaTail(mean ** 2 / variance, (amount * mean) / variance);
        p *= ((n + 1 / spread2) / (n + 1)) * ((lam * spread2) / (1 + lam * spread2));
      }
    }
    expect(Math.abs(chanceReached(of, amount, 40) - wanted)).toBeLessThan(2e-6);
  });

  it('steps where use has no spread', () => {
    const certain = reach({
      planned: [],
      everyday: perDay(0),
      now: 0,
      unplanned: perDay(1e-15),
      occasion: 4,
    });
    expect(chanceReached(certain, 3, 900)).toBe(0);
    const exact = { ...NOTHING, now: 5, weeksSeen: Number.POSITIVE_INFINITY, dispersion: 0 };
    // the level itself is never certain, so the tail is wide even without dispersion
    expect(chanceReached(reachOf(exact, ALL_AWAKE), 5, 0)).toBeGreaterThan(0.4);
    expect(chanceReached(reachOf(exact, ALL_AWAKE), 5, 0)).toBeLessThan(0.6);
  });

  it('gives the same for a unit of another size', () => {
    const at = (scale: number) =>
      chanceReached(
        reach({
          everyday: perDay(10 * scale),
          dispersion: 30 * scale,
          unplanned: perDay(0.02),
          occasion: 150 * scale,
          occasionSpread2: 0.2,
          planned: [{ event: event('a', [30], 0.9), amount: 180 * scale }],
        }),
        1200 * scale,
        80,
      );
    expect(at(1 / 1.609344)).toBeCloseTo(at(1), 12);
  });

  it('is finite for any size of anything', () => {
    for (const size of [1e-300, 1e-160, 1e-12, 1, 1e9, 1e150])
      for (const amount of [1e-300, 1e-9, 1, 1e12]) {
        const tiny = reach({
          now: size,
          everyday: perDay(size),
          dispersion: size,
          unplanned: perDay(0.1),
          occasion: size,
          occasionSpread2: 0.1,
          planned: [{ event: event('a', [3], 0.5), amount: size }],
        });
        const chance = chanceReached(tiny, amount, 10);
        expect(chance).toBeGreaterThanOrEqual(0);
        expect(chance).toBeLessThanOrEqual(1);
      }
  });
});
