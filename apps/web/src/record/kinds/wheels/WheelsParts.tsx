'use client';

import { Controller, useWatch } from 'react-hook-form';
import { ChoiceField } from '../../ChoiceField.tsx';
import { CORNERS } from '../../corners.ts';
import { errorWithin, type PartProps, TORQUE_UNITS } from '../../parts.ts';
import { Quantity } from '../../Quantity.tsx';
import { TickField } from '../../TickField.tsx';
import { Ticks } from '../../Ticks.tsx';

const CHANGES = [
  { value: 'off', words: 'Taken off' },
  { value: 'torqued', words: 'Tightened to torque' },
  { value: 'rechecked', words: 'Torque checked again' },
] as const;

export function WheelsParts({ form, errors }: PartProps) {
  const rows = { form, errors };
  const change = useWatch({ control: form.control, name: 'wheels.change' });
  return (
    <>
      <ChoiceField
        {...rows}
        name="wheels.change"
        path="change"
        label="The wheels were"
        layout="stack"
        options={CHANGES}
      />
      <Controller
        control={form.control}
        name="wheels.which"
        render={({ field: { value, onChange } }) => (
          <Ticks
            legend="Which"
            corners
            rows={CORNERS.map((corner) => ({ id: corner.value, words: corner.words }))}
            done={value}
            onChange={onChange}
            error={errorWithin(errors, 'which')}
          />
        )}
      />
      {change === 'off' ? null : (
        <>
          <Quantity
            {...rows}
            name="wheels.torque"
            path="torque"
            label="Torque"
            hint="As the manual of this car gives it."
            optional
            units={TORQUE_UNITS}
          />
          <TickField form={form} name="wheels.cold" label="Wheels and brakes were cold" />
        </>
      )}
    </>
  );
}
