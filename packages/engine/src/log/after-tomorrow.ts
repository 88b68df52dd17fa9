import { addDays } from '../calendar/add.ts';

/**
 * True for a date later than tomorrow, both in the garage's zone. Tomorrow itself is let through: a
 * phone across the date line may already be there.
 *
 * @param on civil date of the entry
 * @param today civil date of today in the garage's zone
 * @example afterTomorrow('2026-05-04', '2026-05-02') // true
 */
export function afterTomorrow(on: string, today: string): boolean {
  return on > addDays(today, 1);
}
