import { describe, expect, it } from 'vitest';
import { carCase, item, km, reading, service, use } from '../../test/car-case.ts';
import { outing } from '../../test/planned-use.ts';
import { formatDay, parseDay } from '../calendar/day-number.ts';
import type { CaseEntry, CaseItem, CaseLimit, PlannedUse } from '../history/case.ts';
import { analyseCase } from '../wear/analyse-case.ts';
import type { ItemResult } from '../wear/result.ts';

const TODAY = '2026-06-15';
const ago = (days: number) => formatDay(parseDay(TODAY) - days);
const ahead = (days: number) => ago(-days);
const sessions = (value: number): CaseLimit => ({ measure: 'sessions', value, weights: {} });

type More = Parameters<typeof carCase>[3];
function judge(entries: CaseEntry[], one: CaseItem, more: More = {}): ItemResult {
  const found = analyseCase(carCase(TODAY, entries, [one], more), { toEvents: true }).items[0];
  if (found === undefined) throw new Error('the item is missing');
  return found;
}

/** Brake fluid changed a hundred days ago; four circuit days in the year before. */
const track: CaseEntry[] = [
  ...[400, 300, 220, 160].map((day) => use(ago(day), 'circuit', { sessions: 4 })),
  service(ago(100), ['fluid']),
];
const fluid = (left: number) => item('fluid', [sessions(left)]);
const by = (left: number, ...planned: PlannedUse[]) => judge(track, fluid(left), { planned });
const likely = (found: ItemResult) => found.dueDate?.p50 ?? '9999-12-31';

describe('what falls due with events on the calendar', () => {
  it('more than six planned events: due on the day that brings the last of it', () => {
    const nine = Array.from({ length: 9 }, (_, at) =>
      outing(`e${at}`, ahead(5 + 5 * at), { sessions: 3 }),
    );
    // 22 is more than seven days of 3 and less than eight; a size is not known to the session
    const found = by(22, ...nine);
    expect([ahead(35), ahead(40)]).toContain(likely(found));
    expect(found.expects?.planned).toBeGreaterThanOrEqual(7);
  });

  it('an event that takes place for certain, and one that takes place with no chance', () => {
    const event = (attend: number) => outing('a', ahead(20), { sessions: 12, attend });
    expect(likely(by(8, event(1)))).toBe(ahead(20));
    expect(likely(by(8, event(0))) > ahead(60)).toBe(true);
    expect(by(8, event(0)).atEvent?.[0]?.ready).toBe(false);
  });

  it('an event called off is one removed: as if it had never been', () => {
    const [off, other] = [outing('a', ahead(20), { sessions: 12 }), outing('b', ahead(200))];
    expect(likely(by(8, off, other))).toBe(ahead(20));
    expect(likely(by(8, other)) > ahead(60)).toBe(true);
  });

  it('an event today: counted today, until its session is on record', () => {
    const event = outing('a', TODAY, { sessions: 12 });
    expect(by(8, event)).toMatchObject({ state: 'dueSoon', probablyOverdue: true });
    const recorded = judge([...track, use(TODAY, 'circuit', { sessions: 3 })], fluid(8), {
      planned: [event],
    });
    expect(recorded.limits[0]).toMatchObject({ accrued: 3 });
    expect(recorded.probablyOverdue).toBe(false);
  });

  it('an event just past without a session: counted as if it had been, for two weeks', () => {
    const event = (day: string) => outing('a', day, { sessions: 12 });
    expect(by(8, event(ago(14))).probablyOverdue).toBe(true);
    expect(by(8, event(ago(15))).probablyOverdue).toBe(false);
  });

  it('two events on one day: both count', () => {
    const two = [outing('a', ahead(20), { sessions: 5 }), outing('b', ahead(20), { sessions: 5 })];
    expect(likely(by(8, ...two))).toBe(ahead(20));
    expect(likely(by(8, two[0] as PlannedUse)) > ahead(20)).toBe(true);
    expect(by(8, ...two).atEvent?.map(({ id }) => id)).toEqual(['a', 'b']);
  });

  it('an event that began before today: its days ahead bring the rest', () => {
    const tour = outing('a', ago(1), { end: ahead(2), sessions: 16 });
    const begun = [...track, use(ago(1), 'circuit', { sessions: 4 })];
    const found = judge(begun, fluid(11), { planned: [tour] });
    // 4 are on record, 8 are left on the two days ahead
    expect(likely(found)).toBe(ahead(2));
    expect(found.limits[0]).toMatchObject({ accrued: 4 });
  });
});

describe('what falls due across storage', () => {
  const year: CaseEntry[] = [
    service(ago(360), ['oil'], { odo: 10_000 }),
    ...Array.from({ length: 12 }, (_, at) => reading(ago(330 - 30 * at), 10_600 + 600 * at)),
  ];
  const oil = item('oil', [km(9000)]);
  const laidUp = (...storage: [string, string | null][]) => judge(year, oil, { storage });

  it('an interval between two readings that was all storage: its use lies on all of its days', () => {
    const found = laidUp([ago(330), ago(300)]);
    expect(found.limits[0]).toMatchObject({ accrued: 7200 });
    expect(found.dueDate?.p50).not.toBeNull();
  });

  it('storage ahead: nothing falls due in it by use', () => {
    const found = laidUp([ahead(1), ahead(120)]);
    expect(found.dueDate?.p10 && found.dueDate.p10 > ahead(120)).toBe(true);
    expect(found.dueDate?.p50 && found.dueDate.p50 > ahead(120)).toBe(true);
  });

  it('overlapping storage: the same as one window', () => {
    expect(laidUp([ahead(1), ahead(90)], [ahead(60), ahead(120)]).dueDate).toEqual(
      laidUp([ahead(1), ahead(120)]).dueDate,
    );
  });

  it('storage without an end: 150 days from its beginning, at least until today', () => {
    expect(laidUp([ago(10), null]).dueDate).toEqual(laidUp([ago(10), ahead(140)]).dueDate);
    expect(laidUp([ago(200), null]).dueDate).toEqual(laidUp([ago(200), TODAY]).dueDate);
  });

  it('a day of the calendar passes in storage all the same', () => {
    const months = item('oil', [{ measure: 'days', value: 380 }]);
    expect(judge(year, months, { storage: [[ago(10), ahead(100)]] }).dueDate?.p50).toBe(ahead(20));
  });

  it('use logged inside storage counts', () => {
    const found = judge([...track, use(ago(20), 'circuit', { sessions: 5 })], fluid(8), {
      storage: [[ago(60), ahead(30)]],
    });
    expect(found.limits[0]).toMatchObject({ accrued: 5 });
  });

  it('an event inside storage counts, on its day', () => {
    const planned = [outing('a', ahead(20), { sessions: 12 })];
    const found = judge(track, fluid(8), { planned, storage: [[ago(60), ahead(30)]] });
    expect(found.dueDate).toMatchObject({ p50: ahead(20) });
    expect(found.pDueWithinLead).toBeGreaterThan(0.5);
  });
});
