'use client';

import { useController, useWatch } from 'react-hook-form';
import { Notice, TextField } from '../../../components/index.ts';
import { type AboutProps, errorWithin, type PartProps } from '../../parts.ts';
import { Ticks } from '../../Ticks.tsx';
import { useAnswered } from './use-answered.ts';

/** What was done about a finding or an incident; an incident's own list is ticked off beside it. */
export function AnswerParts({ form, errors, about }: AboutProps) {
  const notice = useWatch({ control: form.control, name: 'answer.notice' });
  const answered = useAnswered(about, notice);
  return (
    <>
      {notice === '' ? (
        <Notice tone="alarm">
          {errors['entry.notice'] ?? 'Open this from the finding or the incident that it answers.'}
        </Notice>
      ) : null}
      {answered.words === '' ? null : <p>{answered.words}</p>}
      <Checked form={form} errors={errors} lines={answered.lines} />
      <TextField
        label="What was done about it"
        autoComplete="off"
        error={errors['entry.answer']}
        {...form.register('answer.answer')}
      />
    </>
  );
}

/** The inspection list; a line that was ticked once and is no longer on it stays. */
function Checked({ form, errors, lines }: PartProps & { lines: readonly string[] }) {
  const { field } = useController({ control: form.control, name: 'answer.checked' });
  const { value } = field;
  const rows = [...lines, ...value.filter((line) => !lines.includes(line))];
  if (rows.length === 0) return null;
  return (
    <Ticks
      legend="Looked at"
      hint="Tick what you have seen with your own eyes; the rest is not known to be good."
      rows={rows.map((line) => ({ id: line, words: line }))}
      done={value}
      onChange={field.onChange}
      error={errorWithin(errors, 'checked')}
    />
  );
}
