import { afterTomorrow, type EntryInput } from '@quartermark/engine/log';
import { refuse } from '../refused.ts';

/**
 * A log holds what happened. One day of grace, because a garage's zone and that of a journey may differ.
 *
 * @param today civil date in the garage's zone
 * @throws Refused `afterTomorrow`
 */
export function checkDay(entry: EntryInput, today: string): void {
  if (afterTomorrow(entry.on, today)) throw notYet('on', entry.on, today);
  // a lay-up says how long it is planned to last; a journey that has not ended is not logged yet
  if (entry.kind === 'drive' && entry.until !== undefined && afterTomorrow(entry.until, today))
    throw notYet('until', entry.until, today);
}

const notYet = (field: string, day: string, today: string) =>
  refuse(
    'afterTomorrow',
    `entry.${field}`,
    `${field}: ${day} has not come yet (today is ${today} in this garage); the log takes what has happened. Correct the date.`,
  );
