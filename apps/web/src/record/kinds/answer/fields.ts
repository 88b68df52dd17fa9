import type { EntryOf } from '@quartermark/engine/log';
import type { RecordFields } from '../../record-fields.ts';
import type { Start } from '../../start.ts';
import { type Members, type Reading, some, text } from '../../typed.ts';

export type AnswerFields = {
  /** id of what is answered */
  notice: string;
  answer: string;
  /** lines of the inspection list that were looked at */
  checked: string[];
};

export const emptyAnswer = ({ notice }: Start): AnswerFields => ({
  notice: notice ?? '',
  answer: '',
  checked: [],
});

export const answerFields = ({ notice, answer, checked }: EntryOf<'answer'>): AnswerFields => ({
  notice,
  answer,
  checked: checked ?? [],
});

export function readAnswer({ answer }: RecordFields, { problems }: Reading): Members {
  const said = text(answer.answer);
  if (!said) problems.answer = 'Say what was done, or why nothing needs to be.';
  if (answer.notice === '')
    problems.notice = 'Open this from the finding or the incident that it answers.';
  return { notice: text(answer.notice), answer: said, checked: some(answer.checked) };
}
