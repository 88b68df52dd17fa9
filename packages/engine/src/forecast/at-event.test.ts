import { describe, expect, it } from 'vitest';
import { carCase, item, km, reading, service, startingPoint, use } from '../../test/car-case.ts';
import { outing } from '../../test/planned-use.ts';
import { formatDay, parseDay } from '../calendar/day-number.ts';
import type { CaseEntry, CaseItem, CaseLimit, PlannedUse } from '../history/case.ts';
import { analyseCase } from '../wear/analyse-case.ts';
import type { AtEvent } from '../wear/result.ts';

const TODAY = '2026-06-15';
const ahead = (days: number) => formatDay(parseDay(TODAY) + days);
const days = (value: number): CaseLimit => ({ measure: 'days', value });
const sessions = (value: number): CaseLimit => ({ measure: 'sessions', value, weights: {} });

/** Four circuit days in the last year, all before the service thirty days ago. */
const track = [350, 250, 150, 50].map((ago) => use(ahead(-ago), 'circuit', { sessions: 4 }));
const log: CaseEntry[] = [...track, service(ahead(-30), ['fluid'])];

function projected(one: CaseItem, planned: PlannedUse[], entries = log): AtEvent[] {
  const analysis = analyseCase(carCase(TODAY, entries, [one], { planned }), { toEvents: true });
  return analysis.items[0]?.atEvent ?? [];
}

function only(one: CaseItem, event: PlannedUse, entries = log): AtEvent {
  const [found] = projected(one, [event], entries);
  if (found === undefined) throw new Error('the event is missing');
  return found;
}

describe('projectToEvent() by the calendar', () => {
  // thirty days gone of sixty: valid through 15 July, thirty days ahead
  const sixty = item('fluid', [days(60)]);

  it('is ready where the event ends on the last valid day, and not a day later', () => {
    expect(only(sixty, outing('a', ahead(30)))).toMatchObject({ pReady: 1, ready: true });
    expect(only(sixty, outing('a', ahead(30), { end: ahead(31) }))).toMatchObject({
      pReady: 0,
      ready: false,
      limits: [{ measure: 'days', dueDate: ahead(30), pReached: 1 }],
    });
  });

  it('wants the work before the event and not after its own day, and the parts before that', () => {
    const late = only(item('fluid', [days(60)], { leadDays: 10 }), outing('a', ahead(50)));
    // 60 days from the 20th day ahead reach the 50th and more; any day will do
    expect(late).toMatchObject({
      latestWorkDate: ahead(30),
      orderBy: ahead(20),
      feasible: true,
      earliestWorkDate: TODAY,
    });
  });

  it('leaves a day of buffer where the event comes before the day it falls due', () => {
    // hardly anybody expects to go there; for who does it is too much
    const rare = outing('a', ahead(12), { sessions: 6, attend: 0.05 });
    expect(only(item('fluid', [sessions(4)]), rare)).toMatchObject({
      ready: false,
      latestWorkDate: ahead(11),
    });
    const near = only(item('fluid', [days(31), sessions(30)]), outing('a', ahead(12)));
    expect(near).toMatchObject({ ready: false, latestWorkDate: ahead(1) });
    const over = only(item('fluid', [days(20), sessions(30)]), outing('a', ahead(12)));
    expect(over).toMatchObject({ latestWorkDate: TODAY, feasible: true });
  });

  it('says that parts come too late', () => {
    const slow = item('fluid', [days(60)], { leadDays: 31 });
    expect(only(slow, outing('a', ahead(50)))).toMatchObject({
      latestWorkDate: ahead(30),
      orderBy: ahead(-1),
      feasible: false,
    });
    expect(only({ ...slow, leadDays: 30 }, outing('a', ahead(50))).feasible).toBe(true);
  });

  it('says when the work is too early to last, and both days where none does both', () => {
    // 60 days reach the 100th day ahead from the 40th on, after the 30th on which it falls due
    expect(only(sixty, outing('a', ahead(100)))).toMatchObject({
      latestWorkDate: ahead(30),
      earliestWorkDate: ahead(40),
    });
  });
});

describe('projectToEvent() by use', () => {
  const fluid = item('fluid', [sessions(16)]);

  it('takes the event itself as attended, others by their chance', () => {
    const [first, second] = projected(fluid, [
      outing('a', ahead(20), { sessions: 5, attend: 0.5 }),
      outing('b', ahead(40), { sessions: 8, attend: 0.5 }),
    ]);
    const [atFirst] = first?.limits ?? [];
    const [atSecond] = second?.limits ?? [];
    if (!atFirst || !('after' in atFirst) || !atSecond || !('after' in atSecond))
      throw new Error('no amounts');
    // the eve knows nothing of it; nobody else's outing falls on the day but for a hundredth
    expect(atFirst.after.mean - atFirst.before.mean).toBeCloseTo(5, 0);
    expect(atSecond.after.mean - atSecond.before.mean).toBeCloseTo(8, 0);
    expect(atSecond.before.mean - atFirst.before.mean).toBeGreaterThan(2.5);
    expect(atSecond.before.mean - atFirst.before.mean).toBeLessThan(4.5);
    expect(atFirst.after.p90).toBeGreaterThanOrEqual(atFirst.before.p90);
    expect(atFirst.before.p90).toBeGreaterThan(atFirst.before.mean);
  });

  it('is ready at nine in ten and not below', () => {
    const at = (value: number) =>
      only(item('fluid', [sessions(value)]), outing('a', ahead(20), { sessions: 6 }));
    for (let value = 5; value < 16; value += 0.5) {
      const { pReady, ready } = at(value);
      expect(ready).toBe((pReady as number) >= 0.9);
    }
    expect(at(5).ready).toBe(false);
    expect(at(15).ready).toBe(true);
  });

  it('lets the work wait until the interval lasts from then to the end of the event', () => {
    const read = [reading(ahead(-400), 0), reading(ahead(-30), 7400), reading(TODAY, 8000)];
    const oil = item('oil', [km(1500)], {
      // the hard-use schedule is none of the work's choice
      severe: {
        classes: ['strip'],
        measure: 'launches',
        share: 1,
        basis: 'limit',
        limits: [km(1)],
      },
    });
    const wait = only(oil, outing('a', ahead(100), { km: 100 }), [
      ...read,
      service(ahead(-30), ['oil'], { odo: 7400 }),
    ]);
    // 20 km a day: 1,400 beside the event's own 100 would be 70 days on average, nine times in ten 40 or so
    expect(wait.ready).toBe(false);
    expect(wait.earliestWorkDate && wait.earliestWorkDate > ahead(40)).toBe(true);
    expect(wait.earliestWorkDate && wait.earliestWorkDate < ahead(80)).toBe(true);
  });

  it('finds no day for the work where the interval is too short for the event alone', () => {
    const short = only(
      item('fluid', [sessions(6)]),
      outing('a', ahead(20), { end: ahead(21), sessions: 8 }),
    );
    expect(short).toMatchObject({ ready: false, earliestWorkDate: null });
    expect(short.latestWorkDate).not.toBeNull();
  });

  it('counts the days left of a running event, and has no eve for the work', () => {
    const running = outing('a', ahead(-1), { end: ahead(2), sessions: 12 });
    const begun = [...log, use(ahead(-1), 'circuit', { sessions: 3 })];
    const [limit] = only(fluid, running, begun).limits;
    if (!limit || !('after' in limit)) throw new Error('no amounts');
    expect(limit.before.mean).toBeCloseTo(3, 0);
    expect(limit.after.mean).toBeCloseTo(3 + 6, 0);
    const worn = only(item('fluid', [sessions(6)]), running, begun);
    expect(worn).toMatchObject({ ready: false, latestWorkDate: TODAY, earliestWorkDate: null });
  });

  it('is asked about events of today, not about those that are over', () => {
    const events = [outing('over', ahead(-1)), outing('today', TODAY), outing('next', ahead(1))];
    expect(projected(fluid, events).map(({ id }) => id)).toEqual(['today', 'next']);
  });

  it('stays within the horizon for an event beyond it', () => {
    const far = only(
      item('fluid', [sessions(400), days(900)]),
      outing('a', ahead(1500), { sessions: 4 }),
    );
    expect(far).toMatchObject({ date: ahead(1500), pReady: 0, ready: false });
    expect(far.limits[1]).toMatchObject({ pReached: 1 });
    expect(far.limits[0]?.pReached).toBeLessThan(0.01);
  });

  it('leaves what was driven before an unread service to the old interval', () => {
    const read = [reading(ahead(-400), 0), reading(ahead(-200), 4000), reading(ahead(-100), 6000)];
    const oil = item('oil', [km(10_000)]);
    const at = (served: number) => {
      const [limit] = only(oil, outing('a', ahead(10), { km: 100 }), [
        ...read,
        service(ahead(-served), ['oil']),
      ]).limits;
      if (!limit || !('before' in limit)) throw new Error('no amounts');
      return limit.before;
    };
    // 20 km a day since the last reading, a hundred days ago
    expect(at(100).mean / 2180).toBeCloseTo(1, 1);
    expect(at(10).mean / 380).toBeCloseTo(1, 1);
    expect(at(10).p90).toBeGreaterThan(at(10).mean);
    expect(at(100).p90 - at(10).p90).toBeCloseTo(at(100).mean - at(10).mean, 3);
  });
});

describe('projectToEvent() where something is not known', () => {
  it('is neither ready nor not where nothing is on record', () => {
    expect(only(item('belt', [days(60)]), outing('a', ahead(5), { end: ahead(6) }))).toEqual({
      id: 'a',
      date: ahead(5),
      endDate: ahead(6),
      pReady: null,
      ready: null,
      limits: [],
      latestWorkDate: null,
      orderBy: null,
      feasible: true,
      earliestWorkDate: null,
    });
  });

  it('is not ready where even the lower bound says so, else unknown', () => {
    const bound = (value: number) =>
      only(
        item('pads', [sessions(value)], { baseline: startingPoint('2020-01-01') }),
        outing('a', ahead(20), { sessions: 6 }),
      );
    expect(bound(100).ready).toBeNull();
    expect(bound(18).ready).toBe(false);
  });

  it('knows a label without a service, and no day for a work that the label does not ask for', () => {
    const label = (value: string) => item('harness', [{ measure: 'date', value }]);
    expect(only(label(ahead(20)), outing('a', ahead(20)), [])).toMatchObject({
      pReady: 1,
      ready: true,
    });
    expect(only(label(ahead(19)), outing('a', ahead(20)), [])).toMatchObject({
      pReady: 0,
      ready: false,
      latestWorkDate: ahead(19),
      limits: [{ measure: 'date', dueDate: ahead(19), pReached: 1 }],
    });
  });
});

describe('projectToEvent() under hard use', () => {
  const one = (limits: CaseLimit[]) =>
    item('fluid', [sessions(20)], {
      severe: { classes: ['circuit'], measure: 'sessions', share: 0.5, basis: 'limit', limits },
    });

  it('needs both the limit and its switch', () => {
    const event = outing('a', ahead(20), { sessions: 10 });
    const [, byUse] = only(one([sessions(4)]), event).limits;
    const [, byDay] = only(one([days(20)]), event).limits;
    // ten sessions of a threshold of ten: about as likely as not, and no more than that
    for (const limit of [byUse, byDay]) {
      expect(limit?.pReached).toBeGreaterThan(0.4);
      expect(limit?.pReached).toBeLessThan(0.75);
    }
    expect(only(one([days(51)]), event).limits[1]?.pReached).toBe(0);
    // whoever asks about it goes there
    const rare = only(one([sessions(4)]), { ...event, attend: 0.05 });
    expect(rare.limits[1]?.pReached).toBeCloseTo(byUse?.pReached ?? 0, 6);
  });
});
