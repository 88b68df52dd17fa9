'use client';

import { useWatch } from 'react-hook-form';
import { TextField } from '../components/index.ts';
import { Fold } from '../forms/Fold.tsx';
import { FormPair } from '../forms/Form.tsx';
import type { PartProps } from './parts.ts';

/** Which oil it was, for who wants to know. */
export function Product({ form, errors, of }: PartProps & { of: 'oilTopUp' | 'oilChange' }) {
  const [product, grade] = useWatch({
    control: form.control,
    name: [`${of}.product`, `${of}.grade`],
  });
  const now = [product, grade].filter((words) => words !== '').join(', ');
  const wrong = ['product', 'grade', 'approval'].some((name) => errors[`entry.${name}`]);
  return (
    <Fold title="Which oil" now={now} wrong={wrong}>
      <TextField
        label="Product"
        optional
        autoComplete="off"
        error={errors['entry.product']}
        {...form.register(`${of}.product`)}
      />
      <FormPair>
        <TextField
          label="Grade"
          hint="Such as 10W-60."
          optional
          autoComplete="off"
          error={errors['entry.grade']}
          {...form.register(`${of}.grade`)}
        />
        <TextField
          label="Approval"
          hint="As the maker names it."
          optional
          autoComplete="off"
          error={errors['entry.approval']}
          {...form.register(`${of}.approval`)}
        />
      </FormPair>
    </Fold>
  );
}
