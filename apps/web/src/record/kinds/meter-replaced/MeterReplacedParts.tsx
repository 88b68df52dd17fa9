'use client';

import { useWatch } from 'react-hook-form';
import { FormPair } from '../../../forms/Form.tsx';
import { ChoiceField } from '../../ChoiceField.tsx';
import { DISTANCE_UNITS, HOUR_UNITS, type PartProps } from '../../parts.ts';
import { Quantity } from '../../Quantity.tsx';

const METERS = [
  { value: 'odometer', words: 'Odometer' },
  { value: 'hours', words: 'Hour meter' },
] as const;

export function MeterReplacedParts({ form, errors }: PartProps) {
  const rows = { form, errors };
  const meter = useWatch({ control: form.control, name: 'meterReplaced.meter' });
  const units = meter === 'hours' ? HOUR_UNITS : DISTANCE_UNITS;
  return (
    <>
      <ChoiceField
        {...rows}
        name="meterReplaced.meter"
        path="meter"
        label="Replaced was the"
        options={METERS}
      />
      <FormPair>
        <Quantity
          {...rows}
          key={`${meter}.oldLast`}
          name={`meterReplaced.${meter}.oldLast`}
          path="oldLast"
          label="The old one showed last"
          hint="Without it, what was driven up to then is a least amount."
          optional
          units={units}
        />
        <Quantity
          {...rows}
          key={`${meter}.newFirst`}
          name={`meterReplaced.${meter}.newFirst`}
          path="newFirst"
          label="The new one shows first"
          units={units}
        />
      </FormPair>
    </>
  );
}
