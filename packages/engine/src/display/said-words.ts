import type { Horizon, JudgedLine, SaidOutcome } from '../said/result.ts';
import { dayAhead } from './due-words.ts';
import { formatDay } from './format-day.ts';
import { formatCount } from './format-quantity.ts';

/** What came of what was said. */
export const SAID_OUTCOME_WORDS: Readonly<Record<SaidOutcome, string>> = {
  inside: 'Inside what was said',
  earlier: 'Earlier than said',
  later: 'Later than said',
  open: 'Not reached yet',
  doneFirst: 'Done before it was due',
  notKnown: 'The log does not tell',
  changed: 'No longer compares',
};

/** How far ahead it was said. */
export const HORIZON_WORDS: Readonly<Record<Horizon, string>> = {
  under30: 'Under 30 days ahead',
  from30: '30 to 90 days ahead',
  over90: 'Over 90 days ahead',
};

const FIRST_TO_RUN_OUT: Readonly<Record<string, string>> = {
  km: 'its distance',
  hours: 'its hours',
  sessions: 'its sessions',
  launches: 'its launches',
  months: 'its months',
  days: 'its days',
  date: 'the date on its label',
};

/**
 * What was said of an item, and when.
 *
 * @example saidThenWords(said)
 * // "On 1 July 2025 we said: likely by 16 August, could be as early as 23 July, nine times in ten by 13 October."
 */
export function saidThenWords({
  saidOn,
  early,
  likely,
  late,
  afterwards,
}: JudgedLine['said']): string {
  const spoken = { asOf: saidOn };
  const when = afterwards
    ? `For ${formatDay(saidOn)}, worked out afterwards from the log`
    : `On ${formatDay(saidOn)} we said`;
  if (early === late) return `${when}: due on ${dayAhead(likely, spoken)}, a day of the calendar.`;
  const parts = [
    `likely by ${dayAhead(likely, spoken)}`,
    early <= saidOn ? 'could be due already' : `could be as early as ${dayAhead(early, spoken)}`,
    late === null
      ? 'perhaps not within three years'
      : `nine times in ten by ${dayAhead(late, spoken)}`,
  ];
  return `${when}: ${parts.join(', ')}.`;
}

/** What was expected to run out first. @example firstToRunOut('km:severe') // "its distance, by the schedule for hard use" */
export function firstToRunOutWords(binding: string | null): string | null {
  if (binding === null) return null;
  const [measure = '', severe] = binding.split(':');
  const words = FIRST_TO_RUN_OUT[measure];
  if (words === undefined) return null;
  return severe === undefined ? words : `${words}, by the schedule for hard use`;
}

/**
 * What happened, beside what was said: the day a limit was reached and the days it lay off.
 *
 * @example happenedWords(judged) // "A limit was reached on 2 August 2025, 14 days before the likely day."
 */
export function happenedWords(line: JudgedLine): string {
  const { outcome, reachedOn, doneOn, knownUntil } = line;
  switch (outcome) {
    case 'inside':
    case 'earlier':
    case 'later':
      if (reachedOn !== null)
        return `A limit was reached on ${formatDay(reachedOn)}, ${offWords(line)}.`;
      return `No limit was reached by ${formatDay(knownUntil)}, ${offWords(line)}${
        doneOn === null ? '' : ', when it was done'
      }.`;
    case 'open':
      return `No limit reached by ${formatDay(knownUntil)}.`;
    case 'doneFirst':
      return `It was done on ${formatDay(doneOn ?? knownUntil)}.`;
    case 'notKnown':
      return 'Part of the use it would take to tell is not in the log, or was not read since.';
    case 'changed':
      return 'Its limits, or the service it counts from, are others now.';
  }
}

/** Days from the likely day to what happened. @example offWords(line) // "6 days before the likely day" */
function offWords({ daysOff, atLeast }: JudgedLine): string {
  const days = daysOff ?? 0;
  if (days === 0) return 'on the likely day';
  const side = days < 0 ? 'before' : 'after';
  return `${atLeast ? 'at least ' : ''}${formatCount(Math.abs(days), 'day')} ${side} the likely day`;
}
