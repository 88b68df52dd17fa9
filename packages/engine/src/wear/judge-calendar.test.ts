import { describe, expect, it } from 'vitest';
import { parseDay } from '../calendar/day-number.ts';
import { type CalendarLimit, judgeCalendar } from './judge-calendar.ts';

function judge(limit: CalendarLimit, service: string | null, asOf: string) {
  return judgeCalendar(
    limit,
    false,
    service === null ? null : parseDay(service),
    parseDay(asOf),
    null,
  );
}

describe('judgeCalendar()', () => {
  it('counts months from the service, clamped', () => {
    expect(judge({ measure: 'months', value: 12 }, '2024-02-29', '2025-01-30')).toEqual({
      measure: 'months',
      severe: false,
      limit: 12,
      known: true,
      elapsedDays: 336,
      remainingDays: 29,
      fraction: 336 / 365,
      dueDate: '2025-02-28',
      due: { p10: '2025-02-28', p50: '2025-02-28', p90: '2025-02-28' },
    });
  });

  it('counts days', () => {
    expect(judge({ measure: 'days', value: 90 }, '2026-03-02', '2026-06-01')).toMatchObject({
      dueDate: '2026-05-31',
      elapsedDays: 91,
      remainingDays: -1,
      fraction: 91 / 90,
    });
  });

  it('takes a label’s day as it is, with or without a service', () => {
    const label: CalendarLimit = { measure: 'date', value: '2027-01-01' };
    expect(judge(label, null, '2026-11-25')).toMatchObject({
      limit: '2027-01-01',
      dueDate: '2027-01-01',
      remainingDays: 37,
      elapsedDays: 0,
      fraction: 0,
    });
    expect(judge(label, null, '2027-01-02')).toMatchObject({ remainingDays: -1, fraction: 1 });
    expect(judge(label, '2026-01-01', '2026-07-02')).toMatchObject({ fraction: 182 / 365 });
  });

  it('is used up where the day does not lie after the service', () => {
    expect(judge({ measure: 'months', value: 0 }, '2025-04-06', '2025-04-06').fraction).toBe(1);
    expect(
      judge({ measure: 'date', value: '2025-01-01' }, '2025-04-06', '2025-05-06').fraction,
    ).toBe(1);
  });

  it('is not due before the day a hard-use limit came into force', () => {
    const months: CalendarLimit = { measure: 'months', value: 1 };
    const from = parseDay('2026-01-01');
    const on = judgeCalendar(months, true, from, from + 90, parseDay('2026-03-10'));
    expect(on.dueDate).toBe('2026-02-01');
    expect(on.due?.p50).toBe('2026-03-10');
    expect(judgeCalendar(months, true, from, from + 90, 'notYet').due).toBeUndefined();
  });

  it('stays inside the calendar for limits beyond its end', () => {
    expect(judge({ measure: 'days', value: 1e9 }, '2026-01-01', '2026-01-02').dueDate).toBe(
      '9999-12-31',
    );
    expect(judge({ measure: 'months', value: 1e6 }, '2026-01-01', '2026-01-02').dueDate).toBe(
      '9999-12-31',
    );
  });
});
