import type { OverviewRow } from '@quartermark/api/client';
import {
  formatDay,
  isUrgent,
  type LaneRoad,
  OIL_STOP_WORDS,
  readyWords,
  STATUS_WORDS,
  STOP_WORDS,
} from '@quartermark/engine/display';
import type { Verdict } from '@quartermark/engine/readiness';
import type { MarkKind } from '../components/StateMark.tsx';

/** How a car stands as a whole. */
export type LaneState = {
  mark: MarkKind;
  words: string;
  /** true: it only counts what the lane's own lines say */
  summed: boolean;
  /** what keeps it off the road, where nothing else is said of it */
  why?: string;
};

type Row = Pick<OverviewRow, 'lane' | 'overdue' | 'dueSoon' | 'notOnRecord' | 'failure' | 'asOf'>;

/**
 * What is to be known of a car before its items: what forbids driving, where it is, else whether it is ready
 * for the road; while that is not known a count.
 */
export function laneState(row: Row): LaneState {
  const { lane, overdue, dueSoon, notOnRecord } = row;
  if (!lane) {
    const words = row.failure ? 'Not worked out' : 'Being worked out';
    return { mark: 'notOnRecord', words, summed: true };
  }
  const { status, stop, laidUp } = lane;
  if (status === 'sold' || status === 'away')
    return { mark: 'laidUp', words: STATUS_WORDS[status], summed: false };
  if (laidUp) return { mark: 'laidUp', words: laidUpWords(laidUp), summed: false };
  if (stop !== null) return { mark: 'overdue', words: STOP_WORDS[stop], summed: false };
  const oil = lane.oil?.stop ?? null;
  if (oil !== null && isUrgent(oil))
    return { mark: 'overdue', words: `Oil ${OIL_STOP_WORDS[oil]}`, summed: false };
  if (lane.road) return roadState(lane.road, row.asOf);
  const counts = [
    overdue > 0 ? `${overdue} past the limit` : '',
    dueSoon > 0 ? `${dueSoon} due soon` : '',
    notOnRecord > 0 ? `${notOnRecord} not on record` : '',
  ].filter((words) => words !== '');
  if (counts.length > 0)
    return {
      mark: overdue > 0 ? 'overdue' : dueSoon > 0 ? 'dueSoon' : 'notOnRecord',
      words: counts.join(', '),
      summed: true,
    };
  if (lane.next.length === 0)
    return { mark: 'notOnRecord', words: 'Nothing watched', summed: true };
  const known = lane.next.every(({ state }) => state !== 'unknown');
  return known
    ? { mark: 'inLimits', words: 'Nothing due', summed: true }
    : { mark: 'atLeast', words: 'Not all known', summed: true };
}

function roadState({ word, by, why }: LaneRoad, asOf: string | null): LaneState {
  // a day goes with that word alone
  const verdict = word === 'canBeReady' && by !== null ? { word, by } : notByADay(word);
  const { mark, word: words } = readyWords(verdict, { asOf });
  const reason = why === null ? {} : { why: why.replace(/\.$/, '') };
  return { mark, words, summed: false, ...reason };
}

function notByADay(word: LaneRoad['word']): Verdict {
  return { word: word === 'canBeReady' ? 'notOnRecord' : word, by: null };
}

function laidUpWords({ since, until }: { since: string; until: string | null }): string {
  const end = until === null ? '' : ` until ${formatDay(until)}`;
  return `Laid up since ${formatDay(since)}${end}`;
}
