import { addDays, weekday } from '../calendar/add.ts';
import { daysBetween } from '../calendar/index.ts';

export type DateCode = { year: number; week: number };

const WRITE = 'write the last four digits on the tyre: week and year, such as 0120';

/**
 * Reads the date code of a tyre: four digits, week then year, alone or at the end of the whole
 * identification number.
 *
 * Three digits were stamped up to 1999 and do not tell the decade: such a tyre is more than 25 years
 * old and is refused with these words. Weeks are 01 to 53; 00 and 54 do not exist.
 *
 * @param text as typed, such as "0120" or "DOT AB12 CDEF 0120"
 * @returns the code, or why it is none, in words that say how to mend it
 * Source: 49 CFR 574.5 (four digits since 64 FR 36807 of 8 July 1999).
 * @example readDateCode('5319') // { week: 53, year: 2019 }
 */
export function readDateCode(text: string): DateCode | { problem: string } {
  const compact = text.trim().replace(/[\s.-]/g, '');
  const digits = /\d*$/.exec(compact)?.[0] ?? '';
  const alone = digits === compact;
  if (digits.length === 3)
    return {
      problem: `"${text}" has three digits, as tyres were stamped before 2000: it is out by age. If a fourth digit is worn away, ${WRITE}`,
    };
  if (digits.length < 4 || (alone && digits.length !== 4))
    return { problem: `"${text}" is not a date code; ${WRITE}` };
  const week = Number(digits.slice(-4, -2));
  const year = 2000 + Number(digits.slice(-2));
  if (week < 1 || week > 53)
    return {
      problem: `"${text}": week ${week} does not exist; ${WRITE}, with a week from 01 to 53`,
    };
  return { year, week };
}

/**
 * First day of the week a tyre was made in: week 01 is the first full week of the year, and weeks run
 * from Sunday to Saturday.
 *
 * @example madeFrom({ year: 2020, week: 1 }) // '2020-01-05'
 * Source: 49 CFR 574.5.
 */
export function madeFrom({ year, week }: DateCode): string {
  const newYear = `${year}-01-01`;
  const firstSunday = addDays(newYear, (7 - weekday(newYear)) % 7);
  return addDays(firstSunday, (week - 1) * 7);
}

/** Days since the first day of its week; negative where the code lies ahead, so that it was misread. */
export function ageDays(code: DateCode, asOf: string): number {
  return daysBetween(madeFrom(code), asOf);
}
