import { readNumber } from '@quartermark/engine/log';

const DIGITS = 3;
const ROUND = 10 ** DIGITS;

/** Whole units of a reading as typed; null where it is no number. @example wholeOf('38,950.4') // 38950 */
export function wholeOf(text: string): number | null {
  const read = readNumber(text, true);
  return 'value' in read ? Math.floor(read.value) : null;
}

/**
 * The reading that typed digits stand for. Up to three are the last ones of the next reading that ends
 * so: an odometer only counts up, so going over a thousand is understood. More are the whole reading, and
 * so is anything where there is no reading before.
 *
 * @param typed digits, up to the length of an odometer
 * @param last the reading before, whole; null: none
 * @returns null where nothing can be made of it
 * @example readingFrom('120', 38_950) // 39120
 */
export function readingFrom(typed: string, last: number | null): number | null {
  const digits = typed.trim();
  if (!/^\d{1,7}$/.test(digits)) return null;
  const value = Number(digits);
  if (last === null || digits.length > DIGITS) return value;
  const step = 10 ** Math.max(digits.length, DIGITS);
  const base = Math.floor(last / ROUND) * ROUND + value;
  return base < last ? base + step : base;
}

/** The last three digits of a reading, with its noughts. @example lastDigits(39_005) // '005' */
export function lastDigits(reading: number): string {
  return String(reading % ROUND).padStart(DIGITS, '0');
}
