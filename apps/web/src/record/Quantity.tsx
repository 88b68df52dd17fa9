'use client';

import type { ReactNode } from 'react';
import { Controller, type FieldPathByValue } from 'react-hook-form';
import { type Option, QuantityField } from '../components/index.ts';
import { errorAt, type PartProps } from './parts.ts';
import type { RecordFields } from './record-fields.ts';
import type { TypedText } from './typed.ts';

type QuantityProps = PartProps & {
  /** in the form */
  name: FieldPathByValue<RecordFields, TypedText>;
  /** in the entry */
  path: string;
  label: string;
  units: readonly Option[];
  hint?: ReactNode;
  optional?: boolean;
};

/** A quantity of the form, as typed. */
export function Quantity({ form, errors, name, path, ...field }: QuantityProps) {
  return (
    <Controller
      control={form.control}
      name={name}
      render={({ field: { value, onChange, onBlur } }) => (
        <QuantityField
          {...field}
          name={name}
          value={value}
          onChange={onChange}
          onBlur={onBlur}
          error={errorAt(errors, path)}
        />
      )}
    />
  );
}
