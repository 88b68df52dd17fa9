import { partsDay } from './draft.ts';
import type { Need, Verdict } from './result.ts';

/**
 * The verdict over the blocking needs that nobody took upon himself, by the worst of them: notMet,
 * then unknown, then metAfterWork. What is not known is never ready.
 *
 * @param today civil date
 * @example verdictOf([], '2026-06-15') // { word: 'ready', by: null }
 */
export function verdictOf(needs: readonly Need[], today: string): Verdict {
  const counted = needs.filter(
    ({ weight, accepted }) => weight === 'blocking' && accepted === null,
  );
  const some = (status: Need['status']) => counted.some((need) => need.status === status);
  if (some('notMet')) return { word: 'notInTime', by: null };
  if (some('unknown')) return { word: 'notOnRecord', by: null };
  if (!some('metAfterWork')) return { word: 'ready', by: null };
  const days = counted.flatMap(({ status, remedy }) =>
    status === 'metAfterWork' && remedy !== null
      ? [latest(partsDay(remedy.parts, remedy.leadDays, today), remedy.earliest ?? today)]
      : [],
  );
  return { word: 'canBeReady', by: days.reduce(latest, today) };
}

const latest = (a: string, b: string) => (a > b ? a : b);
