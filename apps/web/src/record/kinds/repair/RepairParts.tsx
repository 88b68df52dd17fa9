'use client';

import { TextField } from '../../../components/index.ts';
import type { PartProps } from '../../parts.ts';
import { TickField } from '../../TickField.tsx';

export function RepairParts({ form, errors }: PartProps) {
  return (
    <>
      <TextField
        label="What was repaired"
        autoComplete="off"
        error={errors['entry.text']}
        {...form.register('repair.text')}
      />
      <TickField
        form={form}
        name="repair.affectsOilUse"
        label="It may change how much oil the engine uses"
        hint="Such as seals, rings, a turbocharger or the breather."
      />
    </>
  );
}
