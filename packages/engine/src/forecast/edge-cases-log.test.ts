import { describe, expect, it } from 'vitest';
import { carCase, exchange, item, km, reading, service, use } from '../../test/car-case.ts';
import { formatDay, parseDay } from '../calendar/day-number.ts';
import type { CaseEntry, CaseItem, CaseLimit } from '../history/case.ts';
import { KM_PER_UNIT } from '../log/units.ts';
import { analyseCase } from '../wear/analyse-case.ts';
import { type AmountLimitResult, type ItemResult, isAmountLimit } from '../wear/result.ts';

// Each of these once made somebody ask: and what if ...? What is said of the log itself is tested beside the
// history; here it is what falls due.

const TODAY = '2026-06-15';
const ago = (days: number) => formatDay(parseDay(TODAY) - days);
const hours = (value: number): CaseLimit => ({ measure: 'hours', value, weights: {} });
const sessions = (value: number): CaseLimit => ({ measure: 'sessions', value, weights: {} });
const NEVER = { p10: null, p50: null, p90: null };

type More = Parameters<typeof carCase>[3];
const analyse = (entries: CaseEntry[], one: CaseItem, more: More = {}) =>
  analyseCase(carCase(TODAY, entries, [one], more));

function judge(entries: CaseEntry[], one = item('oil', [km(5000)]), more: More = {}): ItemResult {
  const found = analyse(entries, one, more).items[0];
  if (found === undefined) throw new Error('the item is missing');
  return found;
}

function amount({ limits }: ItemResult): AmountLimitResult {
  const [limit] = limits;
  if (limit === undefined || !isAmountLimit(limit)) throw new Error('no amount limit');
  return limit;
}

const likely = (found: ItemResult) => found.dueDate?.p50 ?? '9999-12-31';
const flags = (entries: CaseEntry[]) =>
  analyse(entries, item('oil', [km(1)])).flags.map(({ code }) => code);

/** A year at 20 km a day, read monthly, with the oil changed at its beginning. */
const year = [
  service(ago(360), ['oil'], { odo: 10_000 }),
  ...Array.from({ length: 12 }, (_, at) => reading(ago(330 - 30 * at), 10_600 + 600 * at)),
];
const oil = item('oil', [km(9000)]);

describe('what falls due of a log with next to nothing in it', () => {
  it('no entries at all: not on record, without a day', () => {
    expect(judge([])).toMatchObject({ state: 'unknown', reasonCode: 'noBaseline', dueDate: NEVER });
  });

  it('a service alone, without any reading: a lower bound, with a day by what cars usually do', () => {
    const found = judge([service(ago(10), ['oil'])]);
    expect(found).toMatchObject({ state: 'fine', probablyOverdue: false });
    expect(likely(found) > ago(-60)).toBe(true);
  });

  it('one reading, with the service: some 18 km a day are expected', () => {
    const found = judge([service(TODAY, ['oil'], { odo: 10_000 })]);
    expect(likely(found) > ago(-200)).toBe(true);
    expect(likely(found) < ago(-420)).toBe(true);
  });

  it('a reading on the day of the service, of the same value: nothing accrued, the same day due', () => {
    const alone = judge([service(ago(30), ['oil'], { odo: 10_000 })]);
    const twice = judge([service(ago(30), ['oil'], { odo: 10_000 }), reading(ago(30), 10_000)]);
    expect(amount(twice).accrued).toBe(0);
    expect(twice.dueDate).toEqual(alone.dueDate);
  });

  it('two readings on one day: what lies between them belongs to that day', () => {
    const found = judge([...year, reading(ago(0), 17_350, { id: 'again' })], oil);
    expect(amount(found).accrued).toBe(7350);
    expect(found.dueDate?.p10).not.toBeNull();
  });

  it('all three days are null where nothing will bring it within three years', () => {
    const launches: CaseLimit = { measure: 'launches', value: 500, weights: {} };
    expect(judge(year, item('oil', [launches])).dueDate).toEqual(NEVER);
    expect(judge(year, item('oil', [launches])).state).toBe('fine');
  });

  it('all weights 0: never due, and nothing is NaN', () => {
    const none = { road: 0, touring: 0, circuit: 0, strip: 0, autocross: 0 };
    const found = judge(
      [...year, use(ago(3), 'circuit', { km: 300 })],
      item('oil', [km(100, none)]),
    );
    expect(found).toMatchObject({ state: 'fine', dueDate: NEVER, pDueWithinLead: 0 });
  });
});

describe('what falls due of a log with odd readings', () => {
  it('the last reading months ago: less certain, and never in silence fine', () => {
    const old = year.filter(({ date }) => date <= ago(240));
    const found = judge(old, item('oil', [km(6000)]));
    expect(amount(found).accrued).toBe(2400);
    expect(amount(found).accruedNow).toBeGreaterThan(6000);
    expect(found).toMatchObject({ state: 'dueSoon', probablyOverdue: true });
  });

  it('a service after the last reading: what was driven before it is none of the new interval', () => {
    const old = year.filter(({ date }) => date <= ago(90));
    const found = judge([...old, service(ago(45), ['oil'], { id: 'late' })], oil);
    expect(amount(found).accruedNow).toBeGreaterThan(700);
    expect(amount(found).accruedNow).toBeLessThan(1100);
  });

  it('more logged than the meter shows: the log wins, and counts in the forecast', () => {
    const track = use(ago(5), 'circuit', { km: 900 });
    const last = year.filter(({ date }) => date < TODAY);
    expect(flags([...last, track, reading(TODAY, 17_200)])).toContain('loggedExceedsMeter');
    const found = judge([...last, track, reading(TODAY, 17_200)], oil);
    expect(amount(found).accrued).toBe(6600 + 900);
  });

  it('a last reading that is rejected: the one before it stands, use since is expected', () => {
    // 2,600 km lower, as the last entry: a typo
    const typo = [
      ...year.filter(({ date }) => date <= ago(30)),
      reading(TODAY, 14_000, { id: 'typo' }),
    ];
    expect(flags(typo)).toContain('readingRejected');
    const found = judge(typo, oil);
    expect(amount(found).accrued).toBe(6600);
    expect(amount(found).accruedNow).toBeGreaterThan(7000);
  });

  it.each([
    { what: 'a low typo', value: 1340, day: 75 },
    { what: 'a high typo', value: 96_500, day: 75 },
  ])('$what between good readings: as if it were not there', ({ value, day }) => {
    const plain = judge(year, oil);
    const found = judge([...year, reading(ago(day), value)], oil);
    expect(found.dueDate).toEqual(plain.dueDate);
    expect(amount(found).accrued).toBe(amount(plain).accrued);
  });

  it('equal high typos at the end: both go, the last good reading stands', () => {
    const good = year.filter(({ date }) => date < TODAY);
    const typos = [reading(ago(1), 171_000), reading(TODAY, 171_000)];
    const found = judge([...good, ...typos], oil);
    expect(amount(found).accrued).toBe(6600);
    expect(found.state).toBe('fine');
  });

  it('an instrument exchanged for one in miles: no step in what accrued', () => {
    const mile = KM_PER_UNIT.mi;
    const swapped = judge(
      [
        ...year.filter(({ date }) => date <= ago(60)),
        exchange(ago(50), 0, { oldValue: 16_200 }),
        reading(TODAY, (1000 / mile) * mile),
      ],
      oil,
    );
    expect(amount(swapped)).toMatchObject({ accrued: 7200, known: true });
    expect(likely(swapped)).toBe(likely(judge(year, oil)));
  });

  it('a roll-over without digits: looks like an exchange nobody logged, so a lower bound', () => {
    const over = [
      service(ago(200), ['oil'], { odo: 99_000 }),
      reading(ago(100), 99_900),
      reading(ago(50), 400),
      reading(TODAY, 1300),
    ];
    expect(flags(over)).toContain('unloggedExchange');
    expect(judge(over, item('oil', [km(90_000)]))).toMatchObject({
      state: 'unknown',
      reasonCode: 'lowerBound',
    });
    const told = judge(over, item('oil', [km(90_000)]), { odoDigits: 5 });
    expect(amount(told)).toMatchObject({ known: true, accrued: 2300 });
  });

  it('an exchange nobody logged, with a reading of the new one on its day: a lower bound with a day', () => {
    const lost = [
      ...year.filter(({ date }) => date <= ago(90)),
      reading(ago(90), 12, { id: 'new' }),
      reading(ago(40), 900),
      reading(TODAY, 1600),
    ];
    expect(flags(lost)).toContain('unloggedExchange');
    const found = judge(lost, oil);
    expect(amount(found).known).toBe(false);
    expect(found.state).not.toBe('fine');
    expect(found.dueDate?.p50).not.toBeNull();
  });

  it('unknown and overdue: overdue wins', () => {
    const lost = [
      ...year.filter(({ date }) => date <= ago(60)),
      reading(ago(40), 20),
      reading(TODAY, 500),
    ];
    expect(judge(lost, item('oil', [km(4000)]))).toMatchObject({
      state: 'overdue',
      reasonCode: null,
    });
  });
});

describe('what falls due at a limit', () => {
  it('a limit reached exactly: due on the day it was', () => {
    const found = judge(year, item('oil', [km(6600)]));
    expect(found).toMatchObject({ state: 'overdue' });
    expect(found.dueDate).toEqual({ p10: ago(30), p50: ago(30), p90: ago(30) });
  });

  it('limits passed by several measures: due since the first, which is what runs out first', () => {
    const found = judge(
      year,
      item('oil', [km(6600), { measure: 'months', value: 6 }, km(3000, { circuit: 2 })]),
    );
    expect(found.dueDate?.p50).toBe(ago(210));
    expect(found.binding).toBe('km');
    expect(amount(found).remaining).toBe(-600);
  });

  it('use in hours alone, and in kilometres alone: each finds its day', () => {
    const byHours = [
      service(ago(300), ['oil'], { hours: 100 }),
      reading(ago(150), null, { hours: 130 }),
      reading(TODAY, null, { hours: 160 }),
    ];
    expect(judge(byHours, item('oil', [hours(100)])).dueDate?.p50).not.toBeNull();
    expect(judge(year, item('oil', [hours(200)])).dueDate?.p50).not.toBeNull();
  });

  it('months or days alone: that day, whatever is driven, and nothing to explain', () => {
    const found = judge(year, item('oil', [{ measure: 'days', value: 400 }]));
    expect(found.dueDate).toEqual({ p10: ago(-40), p50: ago(-40), p90: ago(-40) });
    expect(found).toMatchObject({ expects: null, probablyOverdue: false, state: 'fine' });
  });

  it('twelve months from a leap day: the last of February', () => {
    const leap = [service('2024-02-29', ['oil'])];
    const found = judge(leap, item('oil', [{ measure: 'months', value: 12 }]));
    expect(found.dueDate?.p50).toBe('2025-02-28');
  });

  it('a service at seven and sessions at nine of its day: the sessions count after it', () => {
    const flushed = service(TODAY, ['oil'], { time: '07:00' });
    const morning = use(TODAY, 'circuit', { sessions: 4, time: '09:00' });
    const found = judge([flushed, morning], item('oil', [sessions(4)]));
    expect(found).toMatchObject({ state: 'overdue', dueDate: { p50: TODAY } });
  });
});
