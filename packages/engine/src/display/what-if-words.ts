import { daysBetween } from '../calendar/add.ts';
import { type FirstToRunOut, firstToRunOut } from '../what-if/first-to-run-out.ts';
import type { WhatIf, WhatIfLine } from '../what-if/what-if.ts';
import type { DueLine } from './due-line.ts';
import { type Spoken, weekdayAhead } from './due-words.ts';
import { countWord, listWords } from './grammar.ts';
import { dueWords, type ItemWords, laneItemWords, type Standing } from './item-words.ts';
import { workWords } from './outlook-words.ts';

/**
 * The first lines of a what-if: what would run out before the end and by when the work is to be done, else
 * whose dates move, else that none does; then what has run out already and what nobody can say.
 *
 * @example whatIfSentences(answer, spoken)
 * // ["Brake fluid is likely to run out before the end of it: latest work Fri 12 June."]
 */
export function whatIfSentences({ lines, outlooks }: WhatIf, spoken: Spoken): string[] {
  if (lines.length === 0)
    return ['Nothing is watched on this car, so none of its dates can be told.'];
  const running = firstToRunOut(outlooks);
  const during = running.filter(({ how }) => how !== 'already');
  const over = running.filter(({ how }) => how === 'already').map(({ name }) => name);
  const unknown = lines.filter(({ after }) => after.state === 'unknown').map(({ name }) => name);
  return [
    ...(during.length > 0 ? runsOutSentences(during, spoken) : [movesSentence(lines, spoken)]),
    ...(over.length > 0 ? [`Has run out already: ${listWords(over)}.`] : []),
    ...(unknown.length > 0 ? [`Not on record, or only in part: ${listWords(unknown)}.`] : []),
  ];
}

function runsOutSentences(during: readonly FirstToRunOut[], spoken: Spoken): string[] {
  const [first, ...rest] = during as [FirstToRunOut, ...FirstToRunOut[]];
  const bare = { notBefore: null, tooShort: false, parts: null };
  const work = workWords({ ...first, ...bare }, spoken);
  const verb = first.how === 'likely' ? 'is likely to' : 'could';
  const head = `${first.name} ${verb} run out before the end of it${work === '' ? '' : `: ${work}`}.`;
  if (rest.length === 0) return [head];
  const count = rest.length === 1 ? 'One more' : `${countWord(rest.length)} more`;
  return [head, `${count} may run out before the end: ${listWords(rest.map(named))}.`];
}

const named = ({ name }: { name: string }) => name;

function movesSentence(lines: readonly WhatIfLine[], spoken: Spoken): string {
  const moved = lines.filter(({ changed }) => changed).sort(byLikely);
  const [first] = moved;
  if (!first) return 'No date that is known would be another.';
  const count = moved.length === 1 ? 'One date moves' : `${countWord(moved.length)} dates move`;
  return `${count}; the first is that of ${first.name}, ${insteadWords(first, spoken)}.`;
}

function byLikely(a: WhatIfLine, b: WhatIfLine): number {
  const far = '9999-12-31';
  const [one, other] = [a.after.dates.likely ?? far, b.after.dates.likely ?? far];
  return one < other ? -1 : one > other ? 1 : 0;
}

function insteadWords({ before, after }: WhatIfLine, spoken: Spoken): string {
  const [from, to] = [before.dates.likely, after.dates.likely];
  if (from === to) {
    const early = after.dates.early;
    return early === null
      ? 'which is due another way'
      : `which could be as early as ${weekdayAhead(early, spoken)}`;
  }
  const old = from === null ? 'not within three years' : weekdayAhead(from, spoken);
  if (to === null) return `not likely within three years instead of by ${old}`;
  return `likely by ${weekdayAhead(to, spoken)} instead of ${old}`;
}

/** An item's state with its dates, near or far off, as the two sides of a what-if show it. */
export function sideWords(line: DueLine, on: Standing): ItemWords {
  const words = laneItemWords(line, on);
  const dated = line.likely !== undefined && (line.state === 'fine' || line.state === 'dueSoon');
  return dated ? { ...words, detail: dueWords(line, on) } : words;
}

/**
 * By how much the likely day moves. Null where it does not, or where one of the two is not known.
 *
 * @example movedWords(line) // "6 days sooner"
 */
export function movedWords({ before, after }: WhatIfLine): string | null {
  const [from, to] = [before.dates.likely, after.dates.likely];
  if (from === null || to === null || from === to) return null;
  const days = daysBetween(to, from);
  const count = Math.abs(days) === 1 ? '1 day' : `${Math.abs(days)} days`;
  return days > 0 ? `${count} sooner` : `${count} later`;
}
