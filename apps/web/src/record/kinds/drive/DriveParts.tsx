'use client';

import { useWatch } from 'react-hook-form';
import { DateField } from '../../../components/index.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { DISTANCE_UNITS, type PartProps } from '../../parts.ts';
import { Quantity } from '../../Quantity.tsx';

const USES = [
  { value: 'road', words: 'On the road' },
  { value: 'touring', words: 'A road trip', hint: 'One or more days away' },
] as const;

export function DriveParts({ form, errors }: PartProps) {
  const use = useWatch({ control: form.control, name: 'drive.use' });
  return (
    <>
      <ChoiceField
        {...{ form, errors }}
        name="drive.use"
        path="use"
        label="It was"
        options={USES}
      />
      <Quantity
        form={form}
        errors={errors}
        name="drive.distance"
        path="distance"
        label="Distance"
        hint="Not needed if you read the odometer."
        optional
        units={DISTANCE_UNITS}
      />
      {use === 'touring' ? (
        <DateField
          label="Last day of the trip"
          hint="The first is the day below."
          optional
          error={errors['entry.until']}
          {...form.register('drive.until')}
        />
      ) : null}
    </>
  );
}
