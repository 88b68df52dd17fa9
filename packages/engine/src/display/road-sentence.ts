import { stopOf } from '../matters/car-status.ts';
import type { CarReadiness } from '../readiness/result.ts';
import type { Analysis } from '../wear/result.ts';
import { holdsBack } from './event-answer.ts';
import { isUrgent, oilStopOf } from './oil-stop-sentence.ts';
import { nearDay } from './verdict-words.ts';

const NAMED = 3;

/**
 * The verdict for the road as the first sentence of a car's page. What the other sentences name already
 * is not named again.
 *
 * @param road null: the car is not in use, or it is being worked out
 * @param said the other sentences: `carSentences()` of the same car
 * @returns null where another sentence says more: what forbids driving it, or where it is
 * @example roadSentence(road, analysis, []) // "Can be ready by Thu 11: Brake fluid."
 */
export function roadSentence(
  road: CarReadiness | null,
  analysis: Analysis,
  said: readonly string[],
): string | null {
  if (road === null || analysis.status !== 'inUse') return null;
  if (stopOf(analysis.status, analysis.matters) !== null) return null;
  if (isUrgent(oilStopOf(analysis.oil))) return null;
  const start = startOf(road, analysis.asOf);
  if (road.verdict.word === 'ready') return `${start}.`;
  const told = said.join(' ').toLowerCase();
  const titles = [...new Set(holdsBack(road).map(({ title }) => title))].filter(
    (title) => !told.includes(title.toLowerCase()),
  );
  return titles.length === 0 ? `${start}.` : `${start}: ${named(titles)}.`;
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
