import { describe, expect, it } from 'vitest';
import { carCase, exchange, reading, service, use } from '../../test/car-case.ts';
import { fitOfCase } from '../../test/forecast-case.ts';
import { outing } from '../../test/planned-use.ts';
import { formatDay, parseDay } from '../calendar/day-number.ts';
import type { CaseEntry } from '../history/case.ts';
import { HORIZON_DAYS } from './day-table.ts';

const TODAY = '2026-06-15';
const ago = (days: number) => formatDay(parseDay(TODAY) - days);

/** Read every ten days, so much a day, from so many days ago until so many. */
function readings(from: number, until: number, perDay: number, start = 10_000): CaseEntry[] {
  const steps = Math.floor((from - until) / 10);
  return Array.from({ length: steps + 1 }, (_, step) =>
    reading(ago(from - 10 * step), start + perDay * 10 * step),
  );
}

const steady = readings(400, 0, 10);

describe('fitMeasure() of everyday use', () => {
  it('expects what a car nothing is known of does', () => {
    const none = carCase(TODAY, []);
    // today itself is a day seen without use: 21 days of prior in 22, then 60 in 61
    const left = (21 / 22) * (60 / 61);
    expect(fitOfCase(none, 'km').everydayRate).toBeCloseTo(18 * left, 9);
    expect(fitOfCase(none, 'hours').everydayRate).toBeCloseTo(0.4 * left, 9);
    expect(fitOfCase(none, 'sessions').everydayRate).toBe(0);
    expect(fitOfCase(none, 'km', { road: 0 }).everydayRate).toBe(0);
  });

  it('expects what was read, and more of it by its weight', () => {
    const fit = fitOfCase(carCase(TODAY, steady), 'km');
    expect(fit.everydayRate).toBeGreaterThan(9.9);
    expect(fit.everydayRate).toBeLessThan(10.7);
    expect(fit.now).toBe(0);
    expect(fit.weeksSeen).toBeCloseTo(401 / 7, 9);
    const double = fitOfCase(carCase(TODAY, steady), 'km', { road: 2 });
    expect(double.everydayRate).toBeCloseTo(2 * fit.everydayRate, 9);
    expect(double.everyday[300]).toBeCloseTo(2 * (fit.everyday[300] as number), 6);
  });

  it('adds up day by day after today, and not in storage', () => {
    const asleep = carCase(TODAY, steady, [], { storage: [[ago(-10), ago(-19)]] });
    const { everyday } = fitOfCase(asleep, 'km');
    expect(everyday[0]).toBe(0);
    expect(everyday[9]).toBeGreaterThan(80);
    expect(everyday[19]).toBe(everyday[9]);
    expect(everyday[20]).toBeGreaterThan(everyday[19] as number);
    expect(everyday).toHaveLength(HORIZON_DAYS + 1);
  });

  it('expects use since the last reading, less what was logged of it', () => {
    const stale = readings(400, 30, 10);
    const fit = fitOfCase(carCase(TODAY, stale), 'km');
    expect(fit.now / (30 * fit.everydayRate)).toBeCloseTo(1, 1);
    expect(fit.unreadUntil(parseDay(ago(15)))).toBeCloseTo(fit.now / 2, 0);
    expect(fit.unreadUntil(parseDay(ago(30)))).toBe(0);
    const logged = (km: number) =>
      fitOfCase(carCase(TODAY, [...stale, use(ago(5), 'road', { km })]), 'km').now;
    expect(logged(100)).toBeCloseTo(fit.now - 100, 6);
    expect(logged(5000)).toBe(0);
  });

  it('leaves an unknown gap out: neither its days nor its use', () => {
    const gap = [
      ...readings(400, 200, 10),
      exchange(ago(90), 0, { meter: 'odo' }),
      ...readings(80, 0, 10, 100),
    ];
    const fit = fitOfCase(carCase(TODAY, gap), 'km');
    expect(fit.everydayRate).toBeGreaterThan(9.7);
    expect(fit.weeksSeen).toBeCloseTo((401 - 110) / 7, 9);
    expect(fit.dispersion).toBeLessThan(fitOfCase(carCase(TODAY, []), 'km').dispersion);
    const drives = [...gap, use(ago(150), 'road', { km: 4000 })];
    const withUse = fitOfCase(carCase(TODAY, drives), 'km');
    expect(withUse.everydayRate).toBeCloseTo(fit.everydayRate, 9);
    expect(withUse.dispersion).toBeCloseTo(fit.dispersion, 9);
  });

  it('takes the log alone as all there is of a car without a meter', () => {
    const drives = Array.from({ length: 40 }, (_, at) =>
      use(ago(10 * at + 5), 'road', { km: 100 }),
    );
    const fit = fitOfCase(carCase(TODAY, drives), 'km');
    expect(fit.now).toBe(0);
    expect(fit.everydayRate).toBeGreaterThan(9.5);
    expect(fit.everydayRate).toBeLessThan(11);
    // nothing for half a year is nothing driven
    const parked = drives.filter(({ date }) => date < ago(180));
    expect(fitOfCase(carCase(TODAY, parked), 'km').everydayRate).toBeLessThan(4);
  });

  it('falls back on the odometer for hours, at the road speed', () => {
    const fit = fitOfCase(carCase(TODAY, steady, [], { roadKmh: 50 }), 'hours');
    expect(fit.everydayRate).toBeGreaterThan(0.19);
    expect(fit.everydayRate).toBeLessThan(0.23);
  });
});

describe('fitMeasure() of occasions', () => {
  const days = Array.from({ length: 10 }, (_, at) =>
    use(ago(40 * at + 20), 'circuit', { km: 150, sessions: 5 }),
  );

  it('expects them about as often as they came, and as large', () => {
    const fit = fitOfCase(carCase(TODAY, days), 'sessions');
    expect(fit.occasion).toBe(5);
    // one in forty days is what the prior expects too; half of the habit of planning is taken off at first
    expect(fit.unplanned[365]).toBeGreaterThan(8);
    expect(fit.unplanned[365]).toBeLessThan(9.3);
    expect(fit.occasionsSeen).toBeGreaterThan(1.5 + 5);
    expect(fit.occasionsSeen).toBeLessThan(1.5 + 10);
  });

  it('weighs each class, and forgets those that count nothing', () => {
    const mixed = [...days, use(ago(3), 'strip', { launches: 8, sessions: 1 })];
    expect(fitOfCase(carCase(TODAY, mixed), 'sessions', { circuit: 2, strip: 0 }).occasion).toBe(
      10,
    );
    expect(fitOfCase(carCase(TODAY, mixed), 'launches').occasion).toBe(8);
  });

  it('knows none where the road counts and there never was one', () => {
    const fit = fitOfCase(carCase(TODAY, steady), 'km');
    expect(fit.occasion).toBe(0);
    expect(fit.unplanned[HORIZON_DAYS]).toBe(0);
  });

  it('takes the size of planned events with it, and hands on those that count', () => {
    const planned = [
      outing('a', ago(-30), { sessions: 9 }),
      outing('b', ago(-40), { useClass: 'touring', km: 800 }),
    ];
    const fit = fitOfCase(carCase(TODAY, days, [], { planned }), 'sessions');
    expect(fit.occasion).toBeCloseTo((10 * 5 + 9) / 11, 9);
    expect(fit.planned.map(({ event, amount }) => [event.id, amount])).toEqual([['a', 9]]);
  });

  it('expects fewer unplanned ones soon of somebody who plans, and as many later', () => {
    const planned = [outing('a', ago(-30), { sessions: 5 })];
    const [plans, never] = [
      fitOfCase(carCase(TODAY, days, [], { planned }), 'sessions').unplanned,
      fitOfCase(carCase(TODAY, days), 'sessions').unplanned,
    ];
    expect(plans[30]).toBeLessThan(0.97 * (never[30] as number));
    const late = (list: Float64Array) => (list[1000] as number) - (list[700] as number);
    expect(late(plans)).toBeCloseTo(late(never), 2);
  });

  it('leaves the same season for a service in the log or not', () => {
    const served = fitOfCase(carCase(TODAY, [...days, service(ago(100), ['oil'])]), 'sessions');
    expect(served.unplanned[365]).toBe(fitOfCase(carCase(TODAY, days), 'sessions').unplanned[365]);
  });
});
