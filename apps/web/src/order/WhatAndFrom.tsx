import type { UseFormRegisterReturn } from 'react-hook-form';
import { TextField } from '../components/index.ts';
import { FormPair } from '../forms/Form.tsx';

type WhatAndFromProps = {
  what: UseFormRegisterReturn;
  from: UseFormRegisterReturn;
  errors: Record<string, string>;
};

/** What was ordered, and from whom. */
export function WhatAndFrom({ what, from, errors }: WhatAndFromProps) {
  return (
    <FormPair>
      <TextField label="What" optional autoComplete="off" error={errors['order.what']} {...what} />
      <TextField
        label="From where"
        optional
        autoComplete="off"
        error={errors['order.from']}
        {...from}
      />
    </FormPair>
  );
}
