import { describe, expect, it } from 'vitest';
import type { StorageWindow } from '../history/storage-windows.ts';
import { dayTable } from './day-table.ts';
import { type FitRule, fitStream } from './fit-stream.ts';

/** The prior year is flat where nobody knows the hemisphere, so that steady use leaves it flat. */
const RULE: FitRule = { season: { swing: 0.25, days: 30 }, tau: 90, levelDays: 60, priorDays: 21 };
const FIRST = 20_000;

function fit(
  use: readonly number[],
  {
    storage = [],
    blank = null,
    prior = 18,
    from = 0,
    until = use.length - 1,
  }: {
    storage?: StorageWindow[];
    blank?: Uint8Array | null;
    prior?: number;
    from?: number;
    until?: number;
  } = {},
) {
  const table = dayTable(FIRST, FIRST + use.length - 1, storage);
  return fitStream({ use: Float64Array.from(use), from, until, blank }, table, null, RULE, prior);
}

/** 1 + f + f^2 ... of so many days, each e^(-1/tau) of the next. */
const faded = (days: number, tau: number) => (1 - Math.exp(-days / tau)) / (1 - Math.exp(-1 / tau));
const steady = (days: number, amount: number) => Array<number>(days).fill(amount);
const at = (days: number) => FIRST + days;

describe('fitStream()', () => {
  it('is the prior where nothing was seen', () => {
    const none = fit([0], { from: 0, until: -1 });
    expect(none.longRun).toBe(18);
    expect(none.level).toBe(18);
    expect(none.activeDays).toBe(0);
  });

  it('is the prior where what was seen is what it expects', () => {
    const { level, longRun, activeDays } = fit(steady(400, 18));
    expect(longRun).toBeCloseTo(18, 9);
    expect(level).toBeCloseTo(18, 9);
    expect(activeDays).toBe(400);
  });

  it('weighs the days seen against the prior, by hand', () => {
    const { level, longRun } = fit(steady(200, 10));
    const long = faded(200, 365);
    const recent = faded(200, 90);
    expect(longRun).toBeCloseTo((10 * long + 21 * 18) / (long + 21), 9);
    expect(level).toBeCloseTo((10 * recent + 60 * longRun) / (recent + 60), 9);
  });

  it('lets recent days weigh most', () => {
    const slower = fit([...steady(200, 20), ...steady(60, 2)]);
    expect(slower.longRun).toBeGreaterThan(slower.level);
    const quicker = fit([...steady(200, 2), ...steady(60, 20)]);
    expect(quicker.longRun).toBeLessThan(quicker.level);
  });

  it('counts no day in storage, neither seen nor ahead', () => {
    const asleep = { from: at(100), until: at(199) };
    const ahead = { from: at(310), until: at(320) };
    const use = [...steady(100, 10), ...steady(100, 0), ...steady(100, 10)];
    const found = fit(use, { storage: [asleep, ahead] });
    expect(found.activeDays).toBe(200);
    expect(found.level).toBeGreaterThan(10);
    expect(fit(use).level).toBeLessThan(9);
    expect(found.rate(315)).toBe(0);
    expect(found.awakeRate(315)).toBeGreaterThan(9);
    expect(found.rate(309)).toBeGreaterThan(9);
  });

  it('counts neither use nor day where nothing is known', () => {
    const blank = Uint8Array.from([...steady(100, 0), ...steady(100, 1), ...steady(100, 0)]);
    const found = fit([...steady(100, 10), ...steady(100, 99), ...steady(100, 10)], { blank });
    expect(found.activeDays).toBe(200);
    // 10 a day and the prior of 18 are all there is
    expect(found.level).toBeGreaterThan(10);
    expect(found.level).toBeLessThan(11);
    expect(found.seasonalDays(90, 210)).toBeCloseTo(20, 0);
  });

  it('spreads a habitual lay-up over a year for which none is known', () => {
    // five months of every year asleep; the second winter from now is on no calendar
    const winters = [100, 465].map((day) => ({ from: at(day), until: at(day + 150) }));
    const stored = (day: number) =>
      winters.some(({ from, until }) => at(day) >= from && at(day) <= until);
    const use = Array.from({ length: 730 }, (_, day) => (stored(day) ? 0 : 10));
    const found = fit(use, { storage: winters });
    const year = (start: number) =>
      Array.from({ length: 365 }, (_, day) => found.rate(start + day)).reduce((a, b) => a + b, 0);
    const awake = 365 - 151;
    expect(year(730 + 200) / (10 * awake)).toBeGreaterThan(0.9);
    expect(year(730 + 200) / (10 * awake)).toBeLessThan(1.15);
  });

  it('adds up the seasonal days after one index, up to another', () => {
    const use = [...steady(50, 18), ...steady(10, 0), ...steady(140, 18)];
    const found = fit(use, { storage: [{ from: at(50), until: at(59) }] });
    expect(found.seasonalDays(40, 70)).toBeCloseTo(20, 6);
    expect(found.seasonalDays(70, 70)).toBe(0);
  });
});
