import { formatDay } from '@quartermark/engine/display';
import { isUnconfirmed, type LayUpWindow, type PlannedLayUp } from '@quartermark/engine/log';
import { spanWords } from '../event/event-words.ts';
import { daysAgo } from '../garage/days-ago.ts';

/** Its days. @example planWords({ start: '2026-11-01' }) // "from 1 November 2026, no end said" */
export function planWords({ start, end }: PlannedLayUp): string {
  if (end === undefined) return `from ${formatDay(start)}, no end said`;
  return end === start ? `on ${formatDay(start)}` : `from ${spanWords({ start, end })}`;
}

/** How far off its first day is; once that has come, how it stands with the plan. */
export function planWhenWords({ start, end }: PlannedLayUp, today: string): string {
  if (start > today) return daysAgo(start, today);
  if (end !== undefined && end < today) return `ended ${daysAgo(end, today)}, by the plan`;
  return start === today
    ? 'begins today, by the plan'
    : `began ${daysAgo(start, today)}, by the plan`;
}

/** What a car's people are asked about a plan of which nothing is on record. */
export type PlanQuestion = { question: string; meanwhile: string };

/**
 * The question about a planned lay-up whose first day has come without a lay-up on record; null where
 * there is nothing to ask.
 *
 * @param recorded windows that the log's entries opened
 */
export function planQuestion(
  layUp: PlannedLayUp,
  recorded: readonly LayUpWindow[],
  today: string,
): PlanQuestion | null {
  if (!isUnconfirmed(layUp, recorded, today)) return null;
  const { start, end } = layUp;
  if (end !== undefined && end < today)
    return {
      question: `It was planned to be laid up ${planWords(layUp)}: was it?`,
      meanwhile: 'Nothing of it is on record, so these days count as days in use.',
    };
  const since = start === today ? 'from today on' : `since ${formatDay(start)}`;
  return {
    question: `Planned to be laid up ${since}: is it?`,
    meanwhile:
      'Until it is on record, the car counts as in use up to today; the plan counts from tomorrow on.',
  };
}
