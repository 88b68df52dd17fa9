import { addDays } from '@quartermark/engine/calendar';
import type { Fact } from '../facts/fact.ts';
import { isThursday } from './settings.ts';

/** That a member was told of a fact, and as what; stored with the letter. */
export type Said = {
  /** id of the fact */
  fact: string;
  /** civil date of the letter */
  on: string;
  grade: number;
  state: string;
};

/**
 * Why a fact is told: `new`; `worse` than when it was told; `changed`, of a verdict that became better;
 * `putOffOver`, the days it was put off for are over; `weekend`, before an event; `again`, a week has passed.
 */
export type Why = 'new' | 'worse' | 'changed' | 'putOffOver' | 'weekend' | 'again';

/** After so many days a fact that still holds is told again. */
export const AGAIN_DAYS = 7;

/**
 * Whether there is a reason to tell of a fact tonight; null: there is none. Nothing is told twice within a week
 * unless it became worse, or its reader asked to be told again after a day. Event weekends are apart, see
 * `isBeforeWeekend()`.
 */
export function whyTell(fact: Fact, said: Said | undefined, today: string): Why | null {
  if (isQuiet(fact, said, today)) return null;
  const good = fact.kind === 'verdict' && fact.verdict.word === 'ready';
  // that a car is ready all along is no news
  if (said === undefined) return good ? null : 'new';
  if (fact.grade > said.grade) return 'worse';
  if (fact.kind === 'verdict' && fact.state !== said.state) return 'changed';
  if (good) return null;
  const { quiet } = fact;
  if (quiet !== null && quiet.until < today && said.on <= quiet.until) return 'putOffOver';
  return addDays(said.on, AGAIN_DAYS) <= today ? 'again' : null;
}

/** Put off, or ordered: unless it is worse than it was then, or is overdue and was never told. */
function isQuiet({ kind, grade, quiet }: Fact, said: Said | undefined, today: string): boolean {
  if (quiet === null || quiet.until < today || grade > quiet.grade) return false;
  return !(quiet.because === 'ordered' && kind === 'overdue' && said === undefined);
}

/** On the Thursday, of an event that begins by Sunday. */
export function isBeforeWeekend(fact: Fact, today: string): boolean {
  if (fact.kind !== 'verdict' || !isThursday(today)) return false;
  const { start } = fact.event;
  return start >= today && start <= addDays(today, 3);
}

/**
 * What has been said, with tonight's added. A fact that is gone is forgotten after a week, so that one that
 * comes and goes is not told each time.
 */
export function remember(
  last: readonly Said[],
  told: readonly Said[],
  facts: readonly Fact[],
  today: string,
): Said[] {
  const now = new Set(told.map(({ fact }) => fact));
  const there = new Set(facts.map(({ id }) => id));
  const kept = last.filter(
    ({ fact, on }) => !now.has(fact) && (there.has(fact) || addDays(on, AGAIN_DAYS) > today),
  );
  return [...kept, ...told].sort((a, b) => (a.fact < b.fact ? -1 : a.fact > b.fact ? 1 : 0));
}
