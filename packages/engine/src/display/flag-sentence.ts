import type { Flag } from '../wear/result.ts';
import { formatDay } from './format-day.ts';

/**
 * What was found odd in the log, and how to mend it. The entry itself always stays; only the value in
 * question is set aside.
 *
 * @param flag from an analysis
 */
export function flagSentence(flag: Flag): string {
  const on = flag.on === null ? '' : ` of ${formatDay(flag.on)}`;
  const onDay = on.replace(' of ', ' on ');
  const value = flag.value === null ? 'The value' : `The value ${flag.value}`;
  switch (flag.code) {
    case 'future':
      return `The entry${on} lies ahead and does not count before that day. If the day is wrong, amend it.`;
    case 'readingRejected':
      return `${value}${on} does not fit between the readings around it and was set aside. Compare it with the instrument and amend it; if the instrument was changed, record that.`;
    case 'readingTooFast':
      return `${value}${on} would mean more than 2,000 km or 24 hours a day and was set aside. Check the digits and the day, then amend it.`;
    case 'unloggedExchange':
      return `The odometer dropped${onDay} and stayed low: the distance across is not known. If the instrument was changed, record "odometer replaced" with its last value; else amend the reading.`;
    case 'rollOver':
      return `The odometer rolled over to zero${onDay} and was counted on. Nothing to do.`;
    case 'loggedExceedsMeter':
      return `The use logged${onDay} is more than the meter shows; the log was believed. Check the distances, or amend the reading.`;
    case 'exchangeWithoutOldValue':
      return `The instrument was changed${onDay} without its last value: the distance across is not known. Amend the entry with the old instrument's last value if you have it.`;
    case 'valueIgnored':
      return `${value}${on} cannot be used and does not count; the rest of its entry does. Amend the entry.`;
    case 'looksTheSame':
      return `The entry${on} looks the same as another one and both count. Remove one if it was written twice; keep both if it happened twice.`;
    case 'orderAssumed':
      return `A use and a service share a day${flag.on === null ? '' : `, ${formatDay(flag.on)},`} and neither has a time: the use counts as before the service. Amend one with its time, or say which came first.`;
    case 'fitConflict':
      return `Put on${onDay} while the log still has it elsewhere: it counts from then in the new place alone, and its totals are at least. Record when it came off, or amend the entry to say that it was moved.`;
    case 'fitNotOn':
      return `Taken off or moved${onDay}, but the log does not have it on there. Record when it went on, or amend the entry.`;
    case 'fitWithoutCar':
      return `The entry${on} does not say which car it was put on and does not count. Amend it with the car.`;
    case 'fitOrderAssumed':
      return `It was fitted or taken off on a day the car was driven${flag.on === null ? '' : `, ${formatDay(flag.on)},`} and neither has a time: the use counts as before. Amend one with its time, or say which came first.`;
    case 'setNotOn':
      return `The session${on} names this set, but the log does not have it on that car then: the session does not count for it. Record when it went on, or amend the session.`;
  }
}
