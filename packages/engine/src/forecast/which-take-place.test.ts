import { describe, expect, it } from 'vitest';
import { seededNumbers } from '../../test/seeded-numbers.ts';
import { gammaTail } from './gamma-tail.ts';
import { type Outcome, type PlannedAmount, whichTakePlace } from './which-take-place.ts';

const SPREAD2 = 0.3 ** 2;

/** Every subset, whatever their number: the plain way. */
function everySubset(events: readonly PlannedAmount[]): Outcome[] {
  return Array.from({ length: 2 ** events.length }, (_, bits) => {
    const outcome = { weight: 1, mean: 0, variance: 0 };
    events.forEach(({ amount, chance }, at) => {
      const goes = ((bits >> at) & 1) === 1;
      outcome.weight *= goes ? chance : 1 - chance;
      if (goes) outcome.mean += amount;
      if (goes) outcome.variance += SPREAD2 * amount * amount;
    });
    return outcome;
  });
}

function moments(outcomes: readonly Outcome[]) {
  const over = (of: (it: Outcome) => number) =>
    outcomes.reduce((sum, it) => sum + it.weight * of(it), 0);
  const mean = over((it) => it.mean);
  return {
    weight: over(() => 1),
    mean,
    variance: over((it) => it.variance + it.mean ** 2) - mean ** 2,
  };
}

/** A season's calendar: days of 2 to 8 sessions, most of them as good as certain. */
function calendar(size: number, seed: number): PlannedAmount[] {
  const next = seededNumbers(seed);
  return Array.from({ length: size }, () => ({
    amount: 2 + Math.floor(7 * next()),
    chance: 0.5 + 0.5 * next(),
  }));
}

const calendars = Array.from({ length: 40 }, (_, at) => calendar(7 + (at % 6), 100 + at));

describe('whichTakePlace()', () => {
  it('is one empty outcome without events', () => {
    expect(whichTakePlace([])).toEqual([{ weight: 1, mean: 0, variance: 0 }]);
  });

  it('is every subset of two, by hand', () => {
    const outcomes = whichTakePlace([
      { amount: 5, chance: 0.9 },
      { amount: 10, chance: 0.5 },
    ]).sort((a, b) => a.mean - b.mean);
    const wanted = [
      [0.05, 0, 0],
      [0.45, 5, 2.25],
      [0.05, 10, 9],
      [0.45, 15, 11.25],
    ];
    expect(outcomes).toHaveLength(4);
    outcomes.forEach(({ weight, mean, variance }, at) => {
      const [w = 0, m = 0, v = 0] = wanted[at] ?? [];
      expect(weight).toBeCloseTo(w, 12);
      expect(mean).toBe(m);
      expect(variance).toBeCloseTo(v, 12);
    });
  });

  it('keeps every subset up to six, and counts by their number beyond', () => {
    const double = (size: number) =>
      Array.from({ length: size }, (_, at) => ({ amount: 2 ** at, chance: 0.5 }));
    expect(whichTakePlace(double(6))).toHaveLength(64);
    expect(whichTakePlace(double(7))).toHaveLength(8);
  });

  it('takes outcomes that add up to the same together', () => {
    const same = Array.from({ length: 5 }, () => ({ amount: 4, chance: 0.9 }));
    const found = whichTakePlace([...same, { amount: 3, chance: 0.5 }]);
    const plain = everySubset([...same, { amount: 3, chance: 0.5 }]);
    expect(found).toHaveLength(12);
    const four = (list: Outcome[]) =>
      list.filter(({ mean }) => mean === 16).reduce((sum, { weight }) => sum + weight, 0);
    expect(four(found)).toBeCloseTo(four(plain), 12);
    // one of 5 and two of 2.5 have the same sum, but not the same spread
    const apart = whichTakePlace([5, 2.5, 2.5].map((amount) => ({ amount, chance: 0.5 })));
    expect(apart.filter(({ mean }) => mean === 5)).toHaveLength(2);
  });

  it('leaves no doubt about events that are certain, few or many', () => {
    for (const size of [3, 9]) {
      const outcomes = whichTakePlace(
        Array.from({ length: size }, (_, at) => ({ amount: at + 1, chance: 1 })),
      );
      const total = (size * (size + 1)) / 2;
      const squares = (size * (size + 1) * (2 * size + 1)) / 6;
      expect(outcomes).toHaveLength(1);
      expect(outcomes[0]?.weight).toBe(1);
      expect(outcomes[0]?.mean).toBe(total);
      expect(outcomes[0]?.variance).toBeCloseTo(SPREAD2 * squares, 9);
    }
  });

  it('drops what is next to impossible', () => {
    const outcomes = whichTakePlace([
      { amount: 4, chance: 1e-7 },
      { amount: 3, chance: 0.9 },
    ]);
    expect(outcomes.map(({ mean }) => mean).toSorted((a, b) => a - b)).toEqual([0, 3]);
  });

  it('by their number keeps weight, mean and variance of all subsets exactly', () => {
    for (const events of calendars) {
      const found = moments(whichTakePlace(events));
      const wanted = moments(everySubset(events));
      // outcomes below a weight of 1e-6 are left out
      expect(Math.abs(found.weight - 1)).toBeLessThan(1e-5);
      expect(Math.abs(found.mean / wanted.mean - 1)).toBeLessThan(1e-5);
      expect(Math.abs(found.variance / wanted.variance - 1)).toBeLessThan(1e-3);
    }
  });

  it('by their number finds the chance of an amount within 0.004 of all subsets', () => {
    let worst = 0;
    for (const [at, events] of calendars.entries()) {
      const everyday = 5 + (at % 4) * 10;
      const chance = (outcomes: readonly Outcome[], amount: number) =>
        outcomes.reduce((sum, { weight, mean, variance }) => {
          const m = everyday + mean;
          const v = 0.06 * everyday ** 2 + 2 * everyday + variance;
          return sum + weight * gammaTail((m * m) / v, (amount * m) / v);
        }, 0);
      const all = everySubset(events);
      const some = whichTakePlace(events);
      for (let amount = 5; amount < 120; amount += 5)
        worst = Math.max(worst, Math.abs(chance(some, amount) - chance(all, amount)));
    }
    expect(worst).toBeLessThan(0.004);
  });
});
