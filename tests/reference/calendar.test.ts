import {
  addDays,
  addMonths,
  civilOf,
  dayNumberOf,
  daysBetween,
  formatDay,
  nextMidnight,
  parseDay,
  todayIn,
  weekday,
} from '@quartermark/engine/calendar';
import { describe, expect, it } from 'vitest';
import civilDays from './data/civil-days.json' with { type: 'json' };

// Source: the rules of the proleptic Gregorian calendar (ISO 8601); the rows were worked out by hand.
const MONTHS_LATER = [
  ['2024-01-31', 1, '2024-02-29', 'clamped, leap year'],
  ['2023-01-31', 1, '2023-02-28', 'clamped'],
  ['2023-01-31', 2, '2023-03-31', 'from the original day, not 28 + 1 month'],
  ['2024-02-29', 12, '2025-02-28', 'leap day, common year'],
  ['2024-02-29', 48, '2028-02-29', 'the leap day returns'],
  ['2023-02-28', 12, '2024-02-28', 'no stickiness to the end of a month'],
  ['2099-02-28', 12, '2100-02-28', '2100 is no leap year'],
  ['2099-02-28', 13, '2100-03-28', 'past the February that 2100 has'],
  ['2096-02-29', 48, '2100-02-28', 'a leap day meets 2100'],
  ['1999-08-31', 6, '2000-02-29', '2000 is a leap year'],
  ['2025-08-31', 6, '2026-02-28', 'clamped, common year'],
  ['2025-10-31', 1, '2025-11-30', 'to a month of 30 days'],
  ['2025-12-31', 2, '2026-02-28', 'across the year'],
  ['2025-03-30', 6, '2025-09-30', 'a night of daylight saving in Europe'],
  ['2025-11-02', 1, '2025-12-02', 'a night of daylight saving in the US'],
  ['2025-04-06', 0, '2025-04-06', 'no month at all'],
] as const;

describe('addMonths()', () => {
  it.each(MONTHS_LATER)('takes %s by %i months to %s (%s)', (from, months, to) => {
    expect(addMonths(from, months)).toBe(to);
  });
});

describe('daysBetween()', () => {
  it.each([
    ['2025-03-30', '2025-09-30', 184],
    ['2025-11-02', '2025-12-02', 30],
    ['2024-02-01', '2024-03-01', 29],
    ['2025-05-02', '2026-04-20', 353],
    ['2026-05-31', '2026-03-02', -90],
  ])('counts %s to %s as %i days, whatever the clocks did', (from, to, days) => {
    expect(daysBetween(from, to)).toBe(days);
  });
});

describe('addDays()', () => {
  it('counts days, not months', () => {
    expect(addDays('2026-03-02', 90)).toBe('2026-05-31');
    expect(addDays('2024-11-01', 900)).toBe('2027-04-20');
    expect(addDays('2026-03-01', -1)).toBe('2026-02-28');
  });
});

// Source: ISO 8601 week days; 1970-01-01 was a Thursday, 2000-01-01 a Saturday (perpetual calendar).
describe('weekday()', () => {
  it.each([
    ['1970-01-01', 4],
    ['1969-12-31', 3],
    ['2000-01-01', 6],
    ['1900-01-01', 1],
    ['2026-11-25', 3],
  ])('%s is day %i of its week', (date, day) => {
    expect(weekday(date)).toBe(day);
  });
});

describe('parseDay()', () => {
  // Source: the runtime's own proleptic Gregorian calendar in UTC (ECMA-262, "Time Values")
  it('agrees with the calendar of ECMA-262 on every day from 1896 to 2104', () => {
    const first = Date.UTC(1896, 0, 1) / 86_400_000;
    const last = Date.UTC(2104, 11, 31) / 86_400_000;
    for (let day = first; day <= last; day += 1) {
      const date = new Date(day * 86_400_000).toISOString().slice(0, 10);
      if (parseDay(date) !== day || formatDay(day) !== date || dayNumberOf(civilOf(day)) !== day)
        throw new Error(`${date} is day ${day}, not ${parseDay(date)} (${formatDay(day)})`);
    }
    expect(last - first + 1).toBe(209 * 365 + 51);
  });

  it.each(['2023-02-29', '2100-02-29', '2026-13-01', '2026-00-10', '2026-04-31', '26-04-01', ''])(
    'refuses "%s"',
    (date) => {
      expect(() => parseDay(date)).toThrow(RangeError);
    },
  );

  it('reads the first and the last day that four digits can name', () => {
    expect(formatDay(parseDay('0000-01-01'))).toBe('0000-01-01');
    expect(formatDay(parseDay('9999-12-31'))).toBe('9999-12-31');
    expect(() => formatDay(parseDay('9999-12-31') + 1)).toThrow(RangeError);
  });
});

describe('todayIn() and nextMidnight()', () => {
  it('have rows to be judged by', () => {
    expect(civilDays.rows.length).toBeGreaterThan(30);
  });

  it.each(civilDays.rows)('in $zone at $instant: $day, until $nextDayBegins', (row) => {
    const instant = Date.parse(row.instant);
    expect(todayIn(instant, row.zone)).toBe(row.day);
    expect(todayIn(new Date(instant), row.zone)).toBe(row.day);
    const next = nextMidnight(instant, row.zone);
    expect(new Date(next).toISOString().replace('.000Z', 'Z')).toBe(row.nextDayBegins);
    expect(next).toBeGreaterThan(instant);
  });

  it('refuse a zone that does not exist', () => {
    expect(() => todayIn(0, 'Mars/Olympus')).toThrow(RangeError);
  });
});
