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
