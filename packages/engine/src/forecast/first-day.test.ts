import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ChanceByDay, firstDayWith, runningChance } from './first-day.ts';

const by = (chances: readonly number[], checkpoints: number[]): ChanceByDay => ({
  chance: (ahead) => chances[ahead] as number,
  checkpoints,
});

describe('firstDayWith()', () => {
  const rising = by([0, 0.1, 0.2, 0.3, 0.5, 0.7, 0.9, 1, 1], [0, 8]);

  it('is the first day on which a rising probability reaches p, and not the day before', () => {
    expect(firstDayWith(rising, 0.1)).toBe(1);
    expect(firstDayWith(rising, 0.5)).toBe(4);
    expect(firstDayWith(rising, 0.51)).toBe(5);
    expect(firstDayWith(rising, 0.9)).toBe(6);
  });

  it('is today where it is reached already, and never where it is not reached at all', () => {
    expect(firstDayWith(by([0.6, 0.7, 0.8], [0, 2]), 0.5)).toBe(0);
    expect(firstDayWith(by([0, 0.1, 0.4], [0, 2]), 0.5)).toBeNull();
  });

  it('does not step over the day of an event that lies between two checkpoints', () => {
    const chances = Array.from({ length: 101 }, (_, day) => (day < 40 ? 0.05 : 0.6));
    expect(firstDayWith(by(chances, [0, 39, 40, 100]), 0.5)).toBe(40);
  });
});

describe('runningChance()', () => {
  it('does not fall where the probability dips', () => {
    const dips = by([0, 0.4, 0.3, 0.35, 0.2, 0.5], [0, 1, 2, 3, 4, 5]);
    expect([0, 1, 2, 3, 4, 5].map((day) => runningChance(dips, day))).toEqual([
      0, 0.4, 0.4, 0.4, 0.4, 0.5,
    ]);
    expect(firstDayWith(dips, 0.4)).toBe(1);
  });

  it('stays at its last value beyond the last checkpoint, and at its first before today', () => {
    const two = by([0.2, 0.3, 0.6], [0, 2]);
    expect(runningChance(two, 99)).toBe(0.6);
    expect(runningChance(two, -3)).toBe(0.2);
  });

  const days = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), {
    minLength: 2,
    maxLength: 60,
  });
  const any = fc.tuple(days, fc.array(fc.nat(59), { maxLength: 6 })).map(([chances, between]) => {
    const last = chances.length - 1;
    const inside = between.filter((day) => day > 0 && day < last);
    return by(
      chances,
      [...new Set([0, ...inside, last])].sort((a, b) => a - b),
    );
  });

  it('never falls from one day to the next, for any probabilities and checkpoints', () => {
    fc.assert(
      fc.property(any, (of) => {
        const last = of.checkpoints.at(-1) as number;
        for (let day = 1; day <= last; day += 1)
          expect(runningChance(of, day)).toBeGreaterThanOrEqual(runningChance(of, day - 1));
      }),
    );
  });

  it('has reached p on a day exactly if the first day with p is not later', () => {
    fc.assert(
      fc.property(any, fc.double({ min: 1e-6, max: 1, noNaN: true }), (of, p) => {
        const first = firstDayWith(of, p);
        const last = of.checkpoints.at(-1) as number;
        for (let day = 0; day <= last; day += 1)
          expect(first !== null && first <= day).toBe(runningChance(of, day) >= p);
      }),
    );
  });
});
