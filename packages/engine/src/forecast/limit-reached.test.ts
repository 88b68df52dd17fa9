import { describe, expect, it } from 'vitest';
import { carCase, exchange, item, km, reading, service, use } from '../../test/car-case.ts';
import { forecastsOfCase } from '../../test/forecast-case.ts';
import { outing } from '../../test/planned-use.ts';
import { daysBetween } from '../calendar/add.ts';
import { formatDay, parseDay } from '../calendar/day-number.ts';
import type { CaseEntry, CaseItem, PlannedUse } from '../history/case.ts';
import { analyseCase } from '../wear/analyse-case.ts';
import { type AmountLimitResult, type ItemResult, isAmountLimit } from '../wear/result.ts';

const TODAY = '2026-06-15';
const ago = (days: number) => formatDay(parseDay(TODAY) - days);
/** 400 days at 20 km a day, read every twenty days until so many days ago. */
const readUntil = (last: number): CaseEntry[] =>
  Array.from({ length: Math.floor((400 - last) / 20) + 1 }, (_, at) =>
    reading(ago(400 - 20 * at), 10_000 + 400 * at),
  );

function judge(one: CaseItem, entries: CaseEntry[], planned: PlannedUse[] = []): ItemResult {
  const found = analyseCase(carCase(TODAY, entries, [one], { planned })).items[0];
  if (found === undefined) throw new Error('the item is missing');
  return found;
}

function amount(found: ItemResult, at = 0): AmountLimitResult {
  const limit = found.limits[at];
  if (limit === undefined || !isAmountLimit(limit)) throw new Error(`no amount limit at ${at}`);
  return limit;
}

const likelyIn = (found: ItemResult, at = 0) =>
  daysBetween(TODAY, found.limits[at]?.due?.p50 ?? '9999-01-01');

describe('leftAtLastReading() by what falls due', () => {
  // 80 days at some 20 km are unread; the oil was changed half way
  const stale = readUntil(80);

  it('leaves what was driven before a service after the last reading to the old interval', () => {
    const changed = judge(item('oil', [km(3000)]), [...stale, service(ago(40), ['oil'])]);
    const { accrued, accruedNow } = amount(changed);
    expect(accrued).toBe(0);
    expect(accruedNow).toBeGreaterThan(650);
    expect(accruedNow).toBeLessThan(950);
    expect(likelyIn(changed)).toBeGreaterThan(95);
  });

  it('counts all of it after a service that was at the last reading', () => {
    const changed = judge(item('oil', [km(3000)]), [
      ...stale,
      service(ago(80), ['oil'], { odo: 16_400 }),
    ]);
    expect(amount(changed).accruedNow).toBeGreaterThan(1400);
    expect(likelyIn(changed)).toBeLessThan(80);
  });

  it('asks for a reading of the meter that counts: an odometer tells no hours', () => {
    const pump = item('pump', [{ measure: 'hours', value: 40, weights: {} }]);
    const hours = Array.from({ length: 17 }, (_, at) =>
      reading(ago(400 - 20 * at), null, { hours: 100 + 8 * at }),
    );
    const by = (odo?: number) =>
      amount(judge(pump, [...hours, service(ago(40), ['pump'], odo === undefined ? {} : { odo })]));
    expect(by(16_800).accruedNow).toBe(by().accruedNow);
    expect(by().accruedNow).toBeLessThan(20);
  });

  it('takes a reading that was rejected as none', () => {
    // 900 km less than the reading before: a typo, as it is the last one
    const oil = item('oil', [km(3000)]);
    const typo = judge(oil, [...stale, service(ago(40), ['oil'], { odo: 15_500 })]);
    const none = judge(oil, [...stale, service(ago(40), ['oil'])]);
    expect(amount(typo).accruedNow).toBe(amount(none).accruedNow);
  });
});

describe('switchReached() by the limit', () => {
  const circuits = (...sessions: number[]) =>
    sessions.map((count, at) => use(ago(20 + 30 * at), 'circuit', { sessions: count, km: 0 }));
  const severe = (limits: CaseItem['limits']): Partial<CaseItem> => ({
    severe: { classes: ['circuit'], measure: 'sessions', share: 0.5, basis: 'limit', limits },
    baseline: { date: ago(300), minute: null, odometerKm: null, complete: true },
  });
  const sessions = (value: number) => ({ measure: 'sessions' as const, value, weights: {} });

  it('lets a hard-use limit count from the day its switch is likely, not before', () => {
    // half of 20 is reached by the event in 30 days; the six months of hard use are up long since
    const one = item('fluid', [sessions(20)], severe([{ measure: 'days', value: 180 }]));
    const event = outing('next', ago(-30), { sessions: 6 });
    const found = judge(one, circuits(3, 3), [event]);
    expect(found.severe?.active).toBe(false);
    expect(found.limits[1]?.due?.p50).toBe(ago(-30));
    expect(found.binding).toBe('days:severe');
    expect(found.state).not.toBe('overdue');
  });

  it('counts a hard-use limit passed before the switch from the switch', () => {
    const one = item('fluid', [sessions(20)], severe([sessions(5)]));
    const found = judge(one, circuits(3, 3), [outing('next', ago(-30), { sessions: 6 })]);
    expect(found.limits[1]).toMatchObject({ remaining: -1, due: { p50: ago(-30) } });
  });

  it('counts it from its own day once the switch is on', () => {
    const one = item('fluid', [sessions(20)], severe([{ measure: 'days', value: 360 }]));
    const found = judge(one, circuits(5, 5));
    expect(found.severe?.active).toBe(true);
    expect(found.limits[1]?.due).toEqual({ p10: ago(-60), p50: ago(-60), p90: ago(-60) });
  });

  it('dates what had passed when the switch came on by the day of the switch', () => {
    const one = item('fluid', [sessions(20)], severe([{ measure: 'days', value: 180 }]));
    expect(judge(one, circuits(5, 5)).limits[1]?.due?.p50).toBe(ago(20));
  });

  it('is never due by hard use where the switch is beyond the horizon', () => {
    const one = item('fluid', [sessions(4000)], severe([{ measure: 'days', value: 360 }]));
    expect(judge(one, circuits(1)).limits[1]?.due?.p10).toBeNull();
  });
});

describe('switchReached() by the share of use', () => {
  const oil = (share: number, more: Partial<CaseItem> = {}) =>
    item('oil', [km(10_000)], {
      severe: { classes: ['circuit'], measure: 'km', share, basis: 'used', limits: [km(100)] },
      ...more,
    });
  const event = outing('next', ago(-30), { km: 900 });

  it('switches on the first day of the mean path on which the share is passed', () => {
    const log = [...readUntil(0), service(ago(20), ['oil'], { odo: 17_600, complete: true })];
    const found = judge(oil(0.2), log, [event]);
    expect(found.severe?.active).toBe(false);
    // 400 km until now and about 600 more until then, 900 of some 1,900 hard
    expect(found.limits[1]?.due).toEqual({ p10: ago(-30), p50: ago(-30), p90: ago(-30) });
  });

  it('never switches where the share stays below', () => {
    const log = [...readUntil(0), service(ago(20), ['oil'], { odo: 17_600, complete: true })];
    expect(judge(oil(0.9), log, [event]).limits[1]?.due?.p10).toBeNull();
  });

  it('waits for a tenth of the interval', () => {
    const far = oil(0.2, { limits: [km(200_000)] });
    const log = [...readUntil(0), service(ago(20), ['oil'], { odo: 17_600, complete: true })];
    // 20,000 km at 20 a day: beyond two years and a half, when 900 of them are no fifth any more
    expect(judge(far, log, [event]).limits[1]?.due?.p10).toBeNull();
  });

  it('leaves what was driven before an unread service out of the share', () => {
    // 1,600 km are unread, 1,200 of them before the service: 900 of some 2,000 km are hard, not of 3,200
    const found = judge(oil(0.4), [...readUntil(80), service(ago(20), ['oil'])], [event]);
    expect(found.limits[1]?.due?.p50).toBe(ago(-30));
  });
});

describe('limitReached()', () => {
  it('dates a limit that was passed by the day it was, for all three', () => {
    const found = judge(item('oil', [km(1000)]), [
      ...readUntil(0),
      service(ago(100), ['oil'], { odo: 16_000 }),
    ]);
    const { reachedOn, due } = amount(found);
    expect(reachedOn).toBe(ago(50));
    expect(due).toEqual({ p10: reachedOn, p50: reachedOn, p90: reachedOn });
  });

  it('forecasts across an exchange from what is read on the new instrument', () => {
    const swapped = [
      ...readUntil(100),
      exchange(ago(100), 0, { oldValue: 16_000 }),
      reading(ago(0), 2000),
      service(ago(300), ['oil'], { odo: 12_000 }),
    ];
    expect(likelyIn(judge(item('oil', [km(10_000)]), swapped))).toBeGreaterThan(150);
    expect(likelyIn(judge(item('oil', [km(10_000)]), swapped))).toBeLessThan(250);
  });

  it('shares one fit between limits of the same weights', () => {
    const of = forecastsOfCase(carCase(TODAY, readUntil(0)));
    expect(of.fitOf({ measure: 'km', weights: { road: 1 } })).toBe(
      of.fitOf({ measure: 'km', weights: {} }),
    );
    expect(of.fitOf({ measure: 'km', weights: { road: 2 } })).not.toBe(
      of.fitOf({ measure: 'km', weights: {} }),
    );
    expect(of.reachOf({ measure: 'km', weights: {} }, 'a')).not.toBe(
      of.reachOf({ measure: 'km', weights: {} }, null),
    );
  });
});
