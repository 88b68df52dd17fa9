import { monthsAfter } from '../calendar/add.ts';
import { formatDay, LAST_DAY, parseDay } from '../calendar/day-number.ts';
import type { CaseLimit } from '../history/case.ts';
import type { CalendarLimitResult } from './result.ts';

export type CalendarLimit = Exclude<CaseLimit, { weights: unknown }>;

/** The day a calendar limit runs out: valid through that day, over on the next. */
export function dueDayOf(limit: CalendarLimit, serviceDay: number): number {
  if (limit.measure === 'date') return parseDay(limit.value);
  if (limit.measure === 'months') return monthsAfter(serviceDay, Math.trunc(limit.value));
  return Math.min(LAST_DAY, serviceDay + Math.trunc(limit.value));
}

/**
 * Judges a calendar limit.
 *
 * D = service + n months (clamped) or + n days, or the label's own day. elapsed = asOf - service,
 * remaining = D - asOf, fraction = elapsed / (D - service); 1 where D does not lie after the service.
 * A label's day needs no service: without one nothing is known to have elapsed, and the fraction is 0
 * up to that day and 1 after it.
 *
 * @param limit months or days > 0, or a date
 * @param serviceDay day number of the last service; null only for a date
 * @param switchedOn day a hard-use limit came into force: it cannot be due before. null for the
 *   usual limits; `notYet` for hard-use limits that are off, whose likely day nobody can say
 * Source: table of months in the reference tests; ISO 8601 calendar.
 */
export function judgeCalendar(
  limit: CalendarLimit,
  severe: boolean,
  serviceDay: number | null,
  asOfDay: number,
  switchedOn: number | null | 'notYet',
): CalendarLimitResult {
  const dueDay = dueDayOf(limit, serviceDay ?? asOfDay);
  const elapsedDays = serviceDay === null ? 0 : asOfDay - serviceDay;
  const totalDays = dueDay - (serviceDay ?? asOfDay);
  const over = asOfDay > dueDay;
  const result: CalendarLimitResult = {
    measure: limit.measure,
    severe,
    limit: limit.value,
    known: true,
    elapsedDays,
    remainingDays: dueDay - asOfDay,
    fraction: totalDays > 0 ? elapsedDays / totalDays : Number(over || serviceDay !== null),
    dueDate: formatDay(dueDay),
  };
  if (switchedOn === 'notYet') return result;
  const due = formatDay(Math.max(dueDay, switchedOn ?? dueDay));
  return { ...result, due: { p10: due, p50: due, p90: due } };
}
