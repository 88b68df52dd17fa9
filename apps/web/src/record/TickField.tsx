'use client';

import { Controller, type FieldPathByValue } from 'react-hook-form';
import { Tick } from '../components/index.ts';
import type { PartProps } from './parts.ts';
import type { RecordFields } from './record-fields.ts';

type TickFieldProps = Pick<PartProps, 'form'> & {
  name: FieldPathByValue<RecordFields, boolean>;
  label: string;
  hint?: string;
};

export function TickField({ form, name, ...tick }: TickFieldProps) {
  return (
    <Controller
      control={form.control}
      name={name}
      render={({ field: { value, onChange } }) => (
        <Tick {...tick} checked={value} onChange={onChange} />
      )}
    />
  );
}
