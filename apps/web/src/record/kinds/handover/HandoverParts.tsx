'use client';

import { TextField } from '../../../components/index.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import type { PartProps } from '../../parts.ts';

const WHAT = [
  { value: 'bought', words: 'Bought' },
  { value: 'sold', words: 'Sold' },
  { value: 'lent', words: 'Lent' },
  { value: 'returned', words: 'Came back' },
] as const;

export function HandoverParts({ form, errors }: PartProps) {
  return (
    <>
      <ChoiceField
        form={form}
        errors={errors}
        name="handover.what"
        path="what"
        label="It was"
        options={WHAT}
      />
      <TextField
        label="From or to whom"
        optional
        autoComplete="off"
        error={errors['entry.who']}
        {...form.register('handover.who')}
      />
    </>
  );
}
