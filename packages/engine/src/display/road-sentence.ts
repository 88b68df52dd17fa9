import { stopOf } from '../matters/car-status.ts';
import type { CarReadiness } from '../readiness/result.ts';
import type { Analysis } from '../wear/result.ts';
import { holdsBack } from './event-answer.ts';
import { isUrgent, oilStopOf } from './oil-stop-sentence.ts';
import { nearDay } from './verdict-words.ts';

const NAMED = 3;

/**
 * The sentences of a car's page with the verdict for the road before them, in one line with the sentence that
 * says why. What another sentence names already is not named again.
 *
 * @param road null: the car is not in use, or it is being worked out
 * @param said `carSentences()` of the same car
 * @returns as they came where another sentence says more: what forbids driving it, or where it is
 * @example withRoad(road, analysis, ['Coolant is due soon.', 'Brake fluid is overdue.'])
 * // ["Can be ready by Thu 11. Brake fluid is overdue.", "Coolant is due soon."]
 */
export function withRoad(
  road: CarReadiness | null,
  analysis: Analysis,
  said: readonly string[],
): string[] {
  if (road === null || isStopped(analysis)) return [...said];
  const start = startOf(road, analysis.asOf);
  const ready = road.verdict.word === 'ready';
  const titles = ready ? [] : [...new Set(holdsBack(road).map(({ title }) => title))];
  const naming = said.find((sentence) => titles.some((title) => names(sentence, title)));
  const lead = ready ? said[0] : naming;
  const untold = titles.filter((title) => !said.some((sentence) => names(sentence, title)));
  const verdict = untold.length === 0 ? `${start}.` : `${start}: ${named(untold)}.`;
  const first = lead === undefined ? verdict : `${verdict} ${lead}`;
  return [first, ...said.filter((sentence) => sentence !== lead)];
}

const names = (sentence: string, title: string) =>
  sentence.toLowerCase().includes(title.toLowerCase());

function isStopped({ status, matters, oil }: Analysis): boolean {
  return status !== 'inUse' || stopOf(status, matters) !== null || isUrgent(oilStopOf(oil));
}

function startOf({ verdict }: CarReadiness, asOf: string): string {
  switch (verdict.word) {
    case 'ready':
      return 'Ready for the road, by the log';
    case 'canBeReady':
      return verdict.by === asOf
        ? 'Can be ready today'
        : `Can be ready by ${nearDay(verdict.by, { asOf })}`;
    case 'notInTime':
      return 'Not ready for the road';
    case 'notOnRecord':
      return 'Not on record whether it is ready for the road';
  }
}

/** Titles hold commas of their own. */
function named(titles: readonly string[]): string {
  const shown = titles.length > NAMED ? titles.slice(0, NAMED - 1) : titles;
  const rest = titles.length - shown.length;
  return [...shown, ...(rest > 0 ? [`${rest} more`] : [])].join('; ');
}
