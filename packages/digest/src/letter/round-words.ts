import { countWord, formatDay, weekdayAhead } from '@quartermark/engine/display';
import type { Fact } from '../facts/fact.ts';
import type { Letter } from './letter.ts';
import { plain } from './plain.ts';
import type { RankedLine } from './to-lines.ts';

const SUBJECT_MOST = 90;

/** @param told how many facts the letter tells or counts */
export function subjectOf(shown: readonly RankedLine[], told: number, garage: string): string {
  const [first] = shown;
  if (!first) return `Nothing new: ${garage}`;
  const more = told - first.line.facts.length;
  const head = plain(first.subject, SUBJECT_MOST);
  return more > 0 ? `${head} (and ${more} more)` : head;
}

/** @example headingOf('Hollow Lane', '2026-06-15') // "Hollow Lane, Mon 15 June 2026" */
export function headingOf(garage: string, today: string): string {
  const [weekday] = weekdayAhead(today, { asOf: null }).split(' ');
  return `${garage}, ${weekday} ${formatDay(today)}`;
}

/** What found no room. */
export function restOf(count: number): Letter['rest'] {
  if (count === 0) return null;
  const text = count === 1 ? 'And one more thing' : `And ${small(count)} more things`;
  return { count, text, link: { to: 'dueList' } };
}

/** How many things stand as they did, where nothing is told. */
export function standingOf(facts: readonly Fact[], cars: number): string {
  const count = (kind: Fact['kind']) => facts.filter((fact) => fact.kind === kind).length;
  const parts = [
    standing(count('urgent'), 'forbids driving or cannot wait', 'forbid driving or cannot wait'),
    standing(count('notWorkedOut'), 'car is not worked out', 'cars are not worked out'),
    standing(count('overdue'), 'is overdue', 'are overdue'),
    standing(count('dueSoon'), 'falls due soon', 'fall due soon'),
    standing(
      count('oilNotice') + count('missedLook'),
      'look at oil is asked for',
      'looks at oil are asked for',
    ),
  ].filter((part) => part !== '');
  const of = cars === 1 ? 'your car' : `your ${small(cars)} cars`;
  if (cars === 0) return 'There is no car here that you may see.';
  if (parts.length === 0) return `Nothing new of ${of}, by the log.`;
  return `Nothing new of ${of}. Open as before: ${parts.join(', ')}.`;
}

function standing(count: number, one: string, many: string): string {
  if (count === 0) return '';
  return count === 1 ? `one ${one}` : `${small(count)} ${many}`;
}

const small = (count: number) => countWord(count).toLowerCase();
