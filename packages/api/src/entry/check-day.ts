import { afterTomorrow, type EntryInput } from '@quartermark/engine/log';
import { badField, refuse } from '../refused.ts';

/**
 * A log holds what happened. One day of grace, because a garage's zone and that of a journey may differ.
 *
 * @param today civil date in the garage's zone
 * @throws Refused `afterTomorrow`, or `badInput` for an end before its beginning
 */
export function checkDay(entry: EntryInput, today: string): void {
  if (afterTomorrow(entry.on, today)) throw notYet('on', entry.on, today);
  if (!('until' in entry) || entry.until === undefined) return;
  if (entry.until < entry.on)
    throw badField(
      'entry.until',
      `until: ${entry.until} is before the first day, ${entry.on}; give the first day or a later one`,
    );
  // a lay-up says how long it is planned to last; a journey that has not ended is not logged yet
  if (entry.kind === 'drive' && afterTomorrow(entry.until, today))
    throw notYet('until', entry.until, today);
}

const notYet = (field: string, day: string, today: string) =>
  refuse(
    'afterTomorrow',
    `entry.${field}`,
    `${field}: ${day} has not come yet (today is ${today} in this garage); the log takes what has happened. Correct the date.`,
  );
