import type { CarReadiness, Need } from '../readiness/result.ts';
import type { LaneRoad } from './lane.ts';

/** The most characters of `why` in a lane. */
export const ROAD_WHY_MAX = 80;

/** A text cut to so many characters, never through the middle of one. */
export function cut(text: string, length: number): string {
  const characters = Array.from(text);
  return characters.length <= length ? text : `${characters.slice(0, length - 1).join('')}…`;
}

const ASKED_FOR = { notMet: 'not met', unknown: 'not on record', metAfterWork: 'after the work' };

/** What it is about comes first, whole where it can be; then what is wrong with it, as far as there is room. */
function why({ title, status, reason }: Need, length: number): string {
  const whole = reason.includes(title) ? reason : `${title}: ${reason}`;
  if (Array.from(whole).length <= length) return whole;
  const word = status === 'met' ? '' : `: ${ASKED_FOR[status]}.`;
  const room = length - word.length;
  const letters = Array.from(title).length;
  // the verdict stands beside it: a title of its own tells more than half a title and a word
  return letters > room && letters <= length ? title : `${cut(title, room)}${word}`;
}

/**
 * What the overview says of a car's readiness for the road; null for a car that is not in use.
 *
 * @param length the most characters of `why`
 */
export function laneRoad(road: CarReadiness | null, length = ROAD_WHY_MAX): LaneRoad | null {
  if (road === null) return null;
  // for the road nothing can be accepted; what was taken on for an event holds for that alone
  const open = road.needs.filter(({ weight, status }) => weight === 'blocking' && status !== 'met');
  const [first] = open;
  const { word, by } = road.verdict;
  return { word, by, why: first === undefined ? null : why(first, length), needs: open.length };
}
