/**
 * Civil dates as integer day numbers: 0 is 1970-01-01, 1 the day after. Inside the engine a day is
 * only ever this number, so neither clocks nor daylight saving can matter.
 */

const DAYS_PER_ERA = 146_097;
const DAYS_TO_1970 = 719_468;
const FORM = /^(\d{4})-(\d{2})-(\d{2})$/;

/** The last day that `YYYY-MM-DD` can name: 9999-12-31. */
export const LAST_DAY = 2_932_896;
/** The first day that `YYYY-MM-DD` can name: 0000-01-01. */
export const FIRST_DAY = -719_528;

export type CivilDay = { year: number; month: number; day: number };

/** Days in a month of the proleptic Gregorian calendar; `month` is 1 to 12. */
export function daysInMonth(year: number, month: number): number {
  if (month === 2) return isLeapYear(year) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

function isLeapYear(year: number): boolean {
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
}

/**
 * Day number of a year, month and day.
 *
 * The year is counted from 1 March, so that the leap day is its last: with y = year - [month <= 2],
 * era = floor(y / 400), yearOfEra = y - 400 era and dayOfYear = floor((153 m' + 2) / 5) + day - 1
 * (m' = 0 in March), the number is 146097 era + 365 yoe + floor(yoe/4) - floor(yoe/100) + dayOfYear
 * - 719468.
 *
 * @param civil year 0 to 9999, month 1 to 12, day 1 to the length of the month
 * Source: the Gregorian rules as ISO 8601 extends them backwards (4, 100, 400 years).
 * @example dayNumberOf({ year: 1970, month: 1, day: 2 }) // 1
 */
export function dayNumberOf({ year, month, day }: CivilDay): number {
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const yearOfEra = y - era * 400;
  const dayOfYear = Math.floor((153 * (month > 2 ? month - 3 : month + 9) + 2) / 5) + day - 1;
  const dayOfEra =
    yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * DAYS_PER_ERA + dayOfEra - DAYS_TO_1970;
}

/** Year, month and day of a day number: the inverse of `dayNumberOf`. */
export function civilOf(dayNumber: number): CivilDay {
  const shifted = dayNumber + DAYS_TO_1970;
  const era = Math.floor(shifted / DAYS_PER_ERA);
  const dayOfEra = shifted - era * DAYS_PER_ERA;
  const yearOfEra = Math.floor(
    (dayOfEra -
      Math.floor(dayOfEra / 1460) +
      Math.floor(dayOfEra / 36_524) -
      Math.floor(dayOfEra / 146_096)) /
      365,
  );
  const dayOfYear =
    dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shiftedMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const month = shiftedMonth < 10 ? shiftedMonth + 3 : shiftedMonth - 9;
  return {
    year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0),
    month,
    day: dayOfYear - Math.floor((153 * shiftedMonth + 2) / 5) + 1,
  };
}

/**
 * Reads a civil date.
 *
 * @param date `YYYY-MM-DD`, a day that exists
 * @returns days since 1970-01-01
 * @throws RangeError if the text is no date or the day does not exist
 * @example parseDay('2024-02-29') // 19782
 */
export function parseDay(date: string): number {
  const parts = FORM.exec(date);
  if (!parts) throw new RangeError(`could not read a date: "${date}", it should be YYYY-MM-DD`);
  const year = Number(parts[1]);
  const month = Number(parts[2]);
  const day = Number(parts[3]);
  if (month < 1 || month > 12 || day < 1 || day > daysInMonth(year, month))
    throw new RangeError(`could not read a date: ${date} does not exist in the calendar`);
  return dayNumberOf({ year, month, day });
}

/**
 * Writes a day number as `YYYY-MM-DD`.
 *
 * @param dayNumber a whole number, FIRST_DAY to LAST_DAY
 * @throws RangeError outside the years 0000 to 9999
 * @example formatDay(19782) // '2024-02-29'
 */
export function formatDay(dayNumber: number): string {
  if (!Number.isInteger(dayNumber) || dayNumber < FIRST_DAY || dayNumber > LAST_DAY)
    throw new RangeError(
      `could not write a date: day ${dayNumber}, it should be a whole day of the years 0000 to 9999`,
    );
  const { year, month, day } = civilOf(dayNumber);
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
}
