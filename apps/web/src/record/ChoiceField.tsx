'use client';

import { Controller, type FieldPathByValue } from 'react-hook-form';
import { Choice } from '../components/index.ts';
import type { PartProps } from './parts.ts';
import type { RecordFields } from './record-fields.ts';

type ChoiceFieldProps = PartProps & {
  /** in the form */
  name: FieldPathByValue<RecordFields, string>;
  /** in the entry */
  path: string;
  label: string;
  hint?: string;
  options: readonly { value: string; words: string; hint?: string }[];
  size?: 'large' | 'small';
  layout?: 'flow' | 'pairs' | 'stack';
};

/** One of a few, all in sight; nothing is chosen before somebody does. */
export function ChoiceField({ form, errors, name, path, ...choice }: ChoiceFieldProps) {
  return (
    <Controller
      control={form.control}
      name={name}
      render={({ field: { value, onChange } }) => (
        <Choice
          {...choice}
          value={value === '' ? null : value}
          onChange={onChange}
          error={errors[`entry.${path}`]}
        />
      )}
    />
  );
}
