import { daysBetween, weekday } from '../calendar/add.ts';
import type { NeedStatus, Verdict } from '../readiness/result.ts';
import { type Spoken, weekdayAhead } from './due-words.ts';
import { formatDay } from './format-day.ts';

/** Which mark goes with a verdict or a need: it lasts from the start until home again, or how it does not. */
export type ReadyMark = 'ready' | 'afterWork' | 'notReady' | 'readyUnknown';

export type ReadyWords = { mark: ReadyMark; word: string };

/** Beyond so many days the number of a day alone would be another month's. */
const DAY_ALONE_DAYS = 27;
const DAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];

/**
 * A day that is near by its day of the week and its number; one farther off with its month.
 *
 * @param day civil date
 * @example nearDay('2026-06-11', { asOf: '2026-06-08' }) // "Thu 11"
 */
export function nearDay(day: string, spoken: Spoken): string {
  const words = weekdayAhead(day, spoken);
  if (spoken.asOf === null) return words;
  const ahead = daysBetween(spoken.asOf, day);
  const near = ahead >= 0 && ahead <= DAY_ALONE_DAYS;
  return near ? words.split(' ').slice(0, 2).join(' ') : words;
}

/**
 * A day as one says it of an event: today, tomorrow, the name of a day within the week, else its date.
 *
 * @example spokenDay('2026-06-20', { asOf: '2026-06-15' }) // "Saturday"
 */
export function spokenDay(day: string, spoken: Spoken): string {
  if (spoken.asOf === null) return formatDay(day);
  const ahead = daysBetween(spoken.asOf, day);
  if (ahead === 0) return 'today';
  if (ahead === 1) return 'tomorrow';
  if (ahead > 1 && ahead < 7) return DAYS[weekday(day) - 1] ?? '';
  return weekdayAhead(day, spoken);
}

/**
 * What the log says of a car for a use, in the words of every screen.
 *
 * @example readyWords({ word: 'canBeReady', by: '2026-06-11' }, { asOf: '2026-06-08' })
 * // { mark: 'afterWork', word: 'Can be ready by Thu 11' }
 */
export function readyWords(verdict: Verdict, spoken: Spoken): ReadyWords {
  switch (verdict.word) {
    case 'ready':
      return { mark: 'ready', word: 'Ready, by the log' };
    case 'canBeReady':
      return { mark: 'afterWork', word: `Can be ready by ${nearDay(verdict.by, spoken)}` };
    case 'notInTime':
      return { mark: 'notReady', word: 'Not in time' };
    case 'notOnRecord':
      return { mark: 'readyUnknown', word: 'Not on record' };
  }
}

const OF_NEED: Readonly<Record<NeedStatus, ReadyWords>> = {
  met: { mark: 'ready', word: 'Fine' },
  metAfterWork: { mark: 'afterWork', word: 'After the work' },
  unknown: { mark: 'readyUnknown', word: 'Not on record' },
  notMet: { mark: 'notReady', word: 'Not met' },
};

/** What became of a need, in the words of every screen. @example needStatusWords('met').word // "Fine" */
export const needStatusWords = (status: NeedStatus): ReadyWords => OF_NEED[status];
