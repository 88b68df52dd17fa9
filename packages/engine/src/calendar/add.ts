import { civilOf, dayNumberOf, daysInMonth, formatDay, LAST_DAY, parseDay } from './day-number.ts';

/**
 * Day number `months` later: the month index goes up, the day is clamped to the length of the month
 * it lands in. Always from the original day: no stickiness to the end of a month.
 *
 * @param dayNumber any day
 * @param months a whole number, may be negative
 * Source: common practice for service intervals; the same rule as "overflow: constrain" of the
 * TC39 Temporal proposal.
 * @example monthsAfter(parseDay('2024-01-31'), 1) // parseDay('2024-02-29')
 */
export function monthsAfter(dayNumber: number, months: number): number {
  const { year, month, day } = civilOf(dayNumber);
  const index = year * 12 + (month - 1) + months;
  const toYear = Math.floor(index / 12);
  const toMonth = index - toYear * 12 + 1;
  const toDay = Math.min(day, daysInMonth(toYear, toMonth));
  return Math.min(LAST_DAY, dayNumberOf({ year: toYear, month: toMonth, day: toDay }));
}

/**
 * The civil date `months` later, clamped to the end of the month (see `monthsAfter`).
 *
 * @example addMonths('2023-01-31', 2) // '2023-03-31'
 */
export function addMonths(date: string, months: number): string {
  return formatDay(monthsAfter(parseDay(date), months));
}

/** The civil date `days` later (or earlier). @example addDays('2026-03-02', 90) // '2026-05-31' */
export function addDays(date: string, days: number): string {
  return formatDay(parseDay(date) + days);
}

/** Days from one civil date to another, negative if it lies before. @example daysBetween('2026-02-28', '2026-03-01') // 1 */
export function daysBetween(from: string, to: string): number {
  return parseDay(to) - parseDay(from);
}

/** Day of the week by ISO 8601: 1 Monday to 7 Sunday. @example weekday('1970-01-01') // 4 */
export function weekday(date: string): number {
  return ((((parseDay(date) + 3) % 7) + 7) % 7) + 1;
}
