import { canonicalJson, type EntryInput, sameUseKey } from '@quartermark/engine/log';
import type { Trouble } from '../client/refusal-words.ts';

export const QUESTIONS = ['odometerBackwards', 'orderUnclear', 'looksTheSame'] as const;

/** Questions that are answered by "as I wrote it". */
export type Question = (typeof QUESTIONS)[number];

/** The question that a refusal asks; null where it is none. */
export function questionOf(trouble: Trouble | null): Question | null {
  const code = trouble?.refusal?.code;
  return QUESTIONS.find((question) => question === code) ?? null;
}

/** What a question is about: an answer holds as long as that stays the same. */
export function subjectOf(question: Question, entry: EntryInput): string {
  const until = entry.kind === 'drive' ? entry.until : null;
  if (question === 'looksTheSame') return sameUseKey(entry) ?? '';
  return question === 'odometerBackwards'
    ? canonicalJson([entry.on, until, entry.odometer])
    : canonicalJson([entry.on, entry.time, entry.dayOrder]);
}

/** Whether a refusal says that somebody else was quicker. */
export function isMeanwhile(trouble: Trouble | null): boolean {
  const code = trouble?.refusal?.code;
  return code === 'conflict' || code === 'removed';
}

/** Whether a refusal says that the part is still on another car, or elsewhere on this one. */
export function isElsewhere(trouble: Trouble | null): boolean {
  return trouble?.refusal?.code === 'alreadyFitted';
}

/** Whether a refusal is shown with its ways out, and need not be said by the form besides. */
export function asksItself(trouble: Trouble | null): boolean {
  return questionOf(trouble) !== null || isMeanwhile(trouble) || isElsewhere(trouble);
}
