'use client';

import { Controller, type FieldPathByValue } from 'react-hook-form';
import { Choice, TextField } from '../components/index.ts';
import type { PartProps } from './parts.ts';
import type { RecordFields } from './record-fields.ts';

type ReadyTextProps = PartProps & {
  name: FieldPathByValue<RecordFields, string>;
  path: string;
  label: string;
  /** what most people mean, to be pressed */
  ready: readonly string[];
  /** over the field for everything else */
  otherwise: string;
  optional?: boolean;
};

/** A short text that is mostly one of a few; a press fills the field, which takes any other. */
export function ReadyText(props: ReadyTextProps) {
  const { form, errors, name, path, label, ready, otherwise, optional = false } = props;
  return (
    <Controller
      control={form.control}
      name={name}
      render={({ field: { value, onChange, onBlur } }) => (
        <>
          <Choice
            label={label}
            options={ready.map((words) => ({ value: words, words }))}
            value={ready.find((words) => words === value) ?? null}
            onChange={onChange}
          />
          <TextField
            label={otherwise}
            name={name}
            optional={optional}
            autoComplete="off"
            value={value}
            onChange={onChange}
            onBlur={onBlur}
            error={errors[`entry.${path}`]}
          />
        </>
      )}
    />
  );
}
