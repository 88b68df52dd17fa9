import { describe, expect, it } from 'vitest';
import { carCase, item, km, reading, service, use } from '../../test/car-case.ts';
import { outing } from '../../test/planned-use.ts';
import { formatDay, parseDay } from '../calendar/day-number.ts';
import type { CaseEntry, CaseItem, CaseLimit } from '../history/case.ts';
import { analyseCase } from '../wear/analyse-case.ts';
import type { ItemResult } from '../wear/result.ts';

const TODAY = '2026-06-15';
const ago = (days: number) => formatDay(parseDay(TODAY) - days);
const readUntil = (last: number): CaseEntry[] =>
  Array.from({ length: Math.floor((400 - last) / 20) + 1 }, (_, at) =>
    reading(ago(400 - 20 * at), 10_000 + 400 * at),
  );
const served = (day: number, ...items: string[]) => service(ago(day), items, { complete: true });

type More = Parameters<typeof carCase>[3];
function judge(one: CaseItem, entries: CaseEntry[], more: More = {}): ItemResult {
  const found = analyseCase(carCase(TODAY, entries, [one], more)).items[0];
  if (found === undefined) throw new Error('the item is missing');
  return found;
}
const months = (value: number): CaseLimit => ({ measure: 'months', value });
const sessions = (value: number): CaseLimit => ({ measure: 'sessions', value, weights: {} });

describe('forecastItem()', () => {
  const log = [...readUntil(0), served(100, 'oil')];

  it('takes the earliest day of its limits, quantile by quantile', () => {
    // 2,000 of 4,400 km gone; twelve months are up between the likely and the late day
    const found = judge(item('oil', [km(4400), { measure: 'days', value: 260 }]), log);
    const [byUse, byDay] = found.limits;
    expect(byDay?.due).toEqual({ p10: ago(-160), p50: ago(-160), p90: ago(-160) });
    expect(found.dueDate).toEqual({ p10: byUse?.due?.p10, p50: byUse?.due?.p50, p90: ago(-160) });
    expect(found.binding).toBe('km');
  });

  it('names the earliest likely day as what runs out first, then the earliest early one', () => {
    expect(judge(item('oil', [km(40_000), months(12)]), log).binding).toBe('months');
    expect(judge(item('oil', [km(4000), months(12)]), log).binding).toBe('km');
    // neither is likely within three years, one could be
    const never = judge(item('oil', [sessions(900), km(26_000)]), log);
    expect(never.dueDate?.p50).toBeNull();
    expect(never.binding).toBe('km');
    // a day before the likely one, though use could be earlier
    expect(judge(item('oil', [km(4400), { measure: 'days', value: 210 }]), log).binding).toBe(
      'days',
    );
    // hard use never comes: its limit is not in sight at all, however much of it is used
    const severe: CaseItem['severe'] = {
      classes: ['circuit'],
      measure: 'sessions',
      share: 1,
      basis: 'limit',
      limits: [km(2200)],
    };
    expect(judge(item('oil', [km(26_000), sessions(900)], { severe }), log).binding).toBe('km');
    // nothing is in sight: the larger used fraction
    expect(judge(item('oil', [sessions(9000), km(90_000)]), log).binding).toBe('km');
  });

  it('has no day beyond three years but for a day of the calendar', () => {
    const found = judge(item('oil', [km(900_000), months(120)]), log);
    expect(found.limits[0]?.due).toEqual({ p10: null, p50: null, p90: null });
    expect(found.dueDate?.p50).toBe('2036-03-07');
  });

  it('adds what is expected since the last reading to what was read', () => {
    const [limit] = judge(item('oil', [km(4400)]), [...readUntil(40), served(100, 'oil')]).limits;
    if (limit === undefined || !('accruedNow' in limit)) throw new Error('no amount limit');
    const unread = (limit.accruedNow as number) - limit.accrued;
    expect(unread / (40 * 20)).toBeCloseTo(1, 1);
    expect((limit.remaining as number) - (limit.remainingNow as number)).toBeCloseTo(unread, 5);
  });

  it('says that it is probably overdue where the reading is old, not where the log knows', () => {
    // some 2,000 of 2,100 km until the last reading, 60 days ago
    const stale = [...readUntil(60), served(160, 'oil')];
    const found = judge(item('oil', [km(2100)]), stale);
    expect(found).toMatchObject({ state: 'dueSoon', probablyOverdue: true });
    expect(judge(item('oil', [km(1900)]), stale)).toMatchObject({
      state: 'overdue',
      probablyOverdue: false,
    });
    expect(judge(item('oil', [km(9000)]), stale).probablyOverdue).toBe(false);
    // likely within the horizon is not probably by now
    expect(judge(item('oil', [km(2200)]), log)).toMatchObject({
      state: 'dueSoon',
      probablyOverdue: false,
    });
  });

  it('says what the likely day rests on', () => {
    const planned = [
      outing('a', ago(-20), { sessions: 4 }),
      outing('b', ago(-900), { sessions: 4 }),
    ];
    const track = [0, 1, 2, 3].map((at) => use(ago(30 + 40 * at), 'circuit', { sessions: 4 }));
    const found = judge(item('fluid', [sessions(30)]), [...track, served(200, 'fluid')], {
      planned,
    });
    expect(found.expects).toMatchObject({
      measure: 'sessions',
      perOccasion: 4,
      planned: 1,
      perWeek: 0,
    });
    expect(found.expects?.moreLikely).toBeGreaterThan(1);
    expect(judge(item('oil', [months(12)]), log).expects).toBeNull();
    const week = judge(item('oil', [km(9000)]), log).expects;
    expect((week?.perWeek as number) / 140).toBeCloseTo(1, 1);
    const asleep = { storage: [[ago(5), ago(-60)] as [string, string]] };
    expect(judge(item('oil', [km(9000)]), log, asleep).expects?.laidUpUntil).toBe(ago(-60));
  });

  it('calls an item due soon exactly where its early day lies within the horizon, to the last bit', () => {
    const at = (value: number) => judge(item('oil', [km(value)]), log);
    const isWithin = (found: ItemResult) => (found.dueDate?.p10 ?? '9999') <= ago(-21);
    let [near, far] = [2000, 9000];
    for (let i = 0; i < 60; i += 1) {
      const middle = (near + far) / 2;
      if (isWithin(at(middle))) near = middle;
      else far = middle;
    }
    expect(far - near).toBeLessThan(1e-5);
    for (const [value, state] of [
      [near, 'dueSoon'],
      [far, 'fine'],
    ] as const) {
      const found = at(value);
      expect(found.pDueWithinLead).toBeCloseTo(0.1, 5);
      expect(found.state).toBe(state);
    }
  });
});
