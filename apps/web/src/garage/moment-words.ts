import { formatDay } from '@quartermark/engine/display';

/**
 * An instant in a garage's own time, with the zone named.
 *
 * @param iso instant, ISO 8601 in UTC
 * @param zone IANA name
 * @example momentWords('2026-11-25T09:05:00Z', 'Europe/London') // "25 November 2026, 09:05 (Europe/London)"
 */
export function momentWords(iso: string, zone: string): string {
  const parts = new Intl.DateTimeFormat('en-GB', {
    timeZone: zone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  }).formatToParts(new Date(iso));
  const part = (type: Intl.DateTimeFormatPartTypes) =>
    parts.find((found) => found.type === type)?.value ?? '';
  const day = formatDay(`${part('year')}-${part('month')}-${part('day')}`);
  return `${day}, ${part('hour')}:${part('minute')} (${zone})`;
}
