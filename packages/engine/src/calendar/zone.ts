import { Temporal } from 'temporal-polyfill';

function dateIn(instant: Date | number, zone: string): Temporal.PlainDate {
  return Temporal.Instant.fromEpochMilliseconds(Number(instant))
    .toZonedDateTimeISO(zone)
    .toPlainDate();
}

/**
 * The civil date it is in a zone at an instant. The one place where an instant becomes a day.
 *
 * @param instant epoch milliseconds, or a Date
 * @param zone IANA name such as Europe/London
 * @throws RangeError for a zone this runtime does not know
 * Source: IANA time zone database as the runtime ships it.
 * @example todayIn(Date.UTC(2026, 2, 31, 22, 30), 'Europe/Berlin') // '2026-04-01'
 */
export function todayIn(instant: Date | number, zone: string): string {
  return dateIn(instant, zone).toString();
}

/**
 * Epoch milliseconds at which the next civil day begins in a zone: always later than `instant`.
 * Where midnight is skipped the day begins at the first minute that exists; where a whole day is
 * skipped (Pacific/Apia, 2011-12-30) the day after it counts.
 *
 * @param instant epoch milliseconds, or a Date
 * @param zone IANA name
 * Source: IANA time zone database as the runtime ships it.
 * @example nextMidnight(Date.UTC(2026, 2, 28, 12), 'Europe/London') // Date.UTC(2026, 2, 29)
 */
export function nextMidnight(instant: Date | number, zone: string): number {
  return dateIn(instant, zone).add({ days: 1 }).toZonedDateTime(zone).epochMilliseconds;
}

/**
 * Epoch milliseconds of a local time. A time that comes twice is the first of the two; one that is skipped is
 * as late as it would have been by the offset before the gap, so never earlier than the gap's end.
 *
 * @param date civil date
 * @param minute of the day, 0 to 1439
 * @param zone IANA name
 * @throws RangeError for a minute outside the day, a date that does not exist, a zone this runtime does not know
 * Source: RFC 5545, section 3.3.5, on local times that come twice or never.
 * @example instantAt('2026-03-29', 90, 'Europe/London') // Date.UTC(2026, 2, 29, 1, 30), shown as 02:30
 */
export function instantAt(date: string, minute: number, zone: string): number {
  if (!Number.isInteger(minute) || minute < 0 || minute > 1439)
    throw new RangeError(`could not tell an instant: minute ${minute}, it should be 0 to 1439`);
  const time = { hour: Math.floor(minute / 60), minute: minute % 60 };
  return Temporal.PlainDate.from(date)
    .toPlainDateTime(time)
    .toZonedDateTime(zone, { disambiguation: 'compatible' }).epochMilliseconds;
}

/** Epoch milliseconds of the first instant of a civil day in a zone. See `nextMidnight()`. */
export function startOfDay(date: string, zone: string): number {
  return Temporal.PlainDate.from(date).toZonedDateTime(zone).epochMilliseconds;
}
