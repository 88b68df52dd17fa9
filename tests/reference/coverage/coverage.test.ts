import { describe, expect, it } from 'vitest';
import { binomialBand } from './binomial.ts';
import {
  type Band,
  type DueDate,
  foreseeDueDates,
  inSight,
  isAfter,
  isBefore,
  isCovered,
  widened,
} from './due-dates.ts';
import { foreseeReadiness, type Readiness } from './readiness.ts';

// Source: cars and drivers of our own making (`habits.ts`, `life.ts`), who know nothing of the method: trips
// and outings by chance, levels that wander, lay-ups half of whose owners forget to say so, readings weekly to
// every other month, three sessions in a hundred never written down. The forecast sees the diary alone; what
// was due when is read off the car's own life. The bands were set before anything was drawn: nominal 0.80
// inside, 0.10 before and after, one limit of a car so that cars are independent, one chance in a thousand to
// fail by bad luck.

const CARS = 200;
const BAD_LUCK = 1e-3;
const dates = foreseeDueDates(CARS, 'one').filter(inSight);
const count = (list: readonly Band[], is: (it: Band) => boolean) => list.filter(is).length;
const holds = (list: readonly DueDate[]) => {
  const [least, most] = binomialBand(list.length, 0.8, BAD_LUCK);
  const covered = count(list, isCovered);
  return covered >= least && covered <= most;
};

describe('binomialBand()', () => {
  // 10 throws of a coin: 1, 10 and 45 of 1024 are up to 0, 1 and 2 heads
  it('leaves out no more than half of the chance on either side', () => {
    expect(binomialBand(10, 0.5, 0.1)).toEqual([2, 8]);
    expect(binomialBand(10, 0.5, 0.02)).toEqual([1, 9]);
    expect(binomialBand(10, 0.5, 0.001)).toEqual([0, 10]);
  });
});

describe('the band of a due date, one limit each of 200 cars', () => {
  it('has enough dates in sight to say anything', () => {
    expect(dates.length).toBeGreaterThan(120);
    expect(new Set(dates.map(({ kind }) => kind)).size).toBe(8);
  });

  it('holds the true day as often as it says', () => {
    expect(holds(dates), `${count(dates, isCovered)} of ${dates.length}`).toBe(true);
  });

  it('would not if it were half as wide, or twice', () => {
    expect(holds(dates.map((it) => widened(it, 0.5)))).toBe(false);
    expect(holds(dates.map((it) => widened(it, 2)))).toBe(false);
  });

  it('is passed no more often on either side than one time in ten', () => {
    const [, most] = binomialBand(dates.length, 0.1, BAD_LUCK);
    expect(count(dates, isBefore)).toBeLessThanOrEqual(most);
    expect(count(dates, isAfter)).toBeLessThanOrEqual(most);
  });

  it('would be, if every day were said two months later or earlier', () => {
    const moved = (by: number) =>
      dates.map((it) => ({ ...it, early: it.early + by, late: it.late + by }));
    const [, most] = binomialBand(dates.length, 0.1, BAD_LUCK);
    expect(count(moved(60), isBefore)).toBeGreaterThan(most);
    expect(count(moved(-60), isAfter)).toBeGreaterThan(most);
  });

  it('lies half the time on either side of the likely day, more or less', () => {
    const [least, most] = binomialBand(dates.length, 0.5, BAD_LUCK);
    const early = dates.filter(({ came, likely }) => came < likely).length;
    const late = dates.filter(({ came, likely }) => came > likely).length;
    // many fall on the day of a planned event, which is the likely day itself
    expect(early).toBeLessThanOrEqual(most);
    expect(late).toBeLessThanOrEqual(most);
    expect(dates.length - late).toBeGreaterThanOrEqual(least);
  });
});

describe('readiness at the next planned event of 300 cars', () => {
  const said = foreseeReadiness(300);
  const classes = [0, 0.1, 0.5, 0.9, 1.000001];
  const inClass = (list: readonly Readiness[], at: number) =>
    list.filter(
      ({ pReady }) => pReady >= (classes[at] as number) && pReady < (classes[at + 1] as number),
    );
  /** Limits of one car share its driver, so they are no independent trials: 0.08 is allowed on top. */
  const ALLOWED = 0.08;
  const off = (list: readonly Readiness[]) => {
    const mean = list.reduce((sum, { pReady }) => sum + pReady, 0) / list.length;
    const lasted = list.filter((it) => it.lasted).length / list.length;
    const spread = Math.sqrt((mean * (1 - mean)) / list.length);
    return Math.abs(lasted - mean) - 3.29 * spread - ALLOWED;
  };
  const isCalibrated = (list: readonly Readiness[]) =>
    classes
      .slice(0, -1)
      .every((_, at) => inClass(list, at).length === 0 || off(inClass(list, at)) <= 0);

  it('has something to say in each class', () => {
    for (let at = 0; at < classes.length - 1; at += 1)
      expect(inClass(said, at).length).toBeGreaterThan(10);
  });

  it('comes true as often as it says', () => {
    expect(isCalibrated(said)).toBe(true);
  });

  it('would not if it were bolder, or more timid', () => {
    expect(isCalibrated(said.map((it) => ({ ...it, pReady: it.pReady ** 0.25 })))).toBe(false);
    expect(isCalibrated(said.map((it) => ({ ...it, pReady: it.pReady ** 4 })))).toBe(false);
  });

  it('is right about 95 of 100 that it calls ready', () => {
    const ready = said.filter(({ pReady }) => pReady >= 0.9);
    expect(ready.filter(({ lasted }) => lasted).length / ready.length).toBeGreaterThan(0.95);
  });
});
