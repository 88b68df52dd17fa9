'use client';

import { Controller, useWatch } from 'react-hook-form';
import { Notice, TextField } from '../../../components/index.ts';
import { type AboutProps, errorWithin } from '../../parts.ts';
import { Ticks } from '../../Ticks.tsx';
import { AnsweredEntry } from './AnsweredEntry.tsx';

/** What was done about a finding or an incident; an incident's own list is ticked off beside it. */
export function AnswerParts({ form, errors, about }: AboutProps) {
  const notice = useWatch({ control: form.control, name: 'answer.notice' });
  const lines = about.incidents.find(({ entry }) => entry === notice)?.lines ?? [];
  return (
    <>
      {notice === '' ? (
        <Notice tone="alarm">
          {errors['entry.notice'] ?? 'Open this from the finding or the incident that it answers.'}
        </Notice>
      ) : (
        <AnsweredEntry garageId={about.garage.id} about={about} notice={notice} />
      )}
      <Controller
        control={form.control}
        name="answer.checked"
        render={({ field: { value, onChange } }) => {
          const rows = [...lines, ...value.filter((line) => !lines.includes(line))];
          return rows.length === 0 ? (
            <></>
          ) : (
            <Ticks
              legend="Looked at"
              hint="Tick what you have seen with your own eyes; the rest is not known to be good."
              rows={rows.map((line) => ({ id: line, words: line }))}
              done={value}
              onChange={onChange}
              error={errorWithin(errors, 'checked')}
            />
          );
        }}
      />
      <TextField
        label="What was done about it"
        autoComplete="off"
        error={errors['entry.answer']}
        {...form.register('answer.answer')}
      />
    </>
  );
}
