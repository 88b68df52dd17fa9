import { parseDay } from '@quartermark/engine/calendar';

/**
 * How long ago a day was, seen from another.
 *
 * @param on and `today` civil dates `YYYY-MM-DD`
 * @example daysAgo('2026-05-01', '2026-05-04') // "3 days ago"
 */
export function daysAgo(on: string, today: string): string {
  const days = parseDay(today) - parseDay(on);
  if (days === 0) return 'today';
  if (days === 1) return 'yesterday';
  if (days === -1) return 'tomorrow';
  return days > 0 ? `${days} days ago` : `in ${-days} days`;
}
