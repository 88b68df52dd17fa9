'use client';

import { useWatch } from 'react-hook-form';
import { TextField } from '../../../components/index.ts';
import { Fold } from '../../../forms/Fold.tsx';
import { FormPair } from '../../../forms/Form.tsx';
import { NUMBER, type PartProps, VOLUME_UNITS } from '../../parts.ts';
import { Quantity } from '../../Quantity.tsx';
import { TickField } from '../../TickField.tsx';

export function FuelParts({ form, errors }: PartProps) {
  const [octane, price] = useWatch({ control: form.control, name: ['fuel.octane', 'fuel.price'] });
  const now = [octane && `${octane} octane`, price].filter(Boolean).join(', ');
  return (
    <>
      <Quantity
        form={form}
        errors={errors}
        name="fuel.volume"
        path="volume"
        label="Fuel"
        units={VOLUME_UNITS}
      />
      <TickField form={form} name="fuel.full" label="Filled up" />
      <Fold
        title="Octane and price"
        now={now}
        wrong={['octane', 'price'].some((name) => errors[`entry.${name}`])}
      >
        <FormPair>
          <TextField
            label="Octane"
            optional
            {...NUMBER}
            error={errors['entry.octane']}
            {...form.register('fuel.octane')}
          />
          <TextField
            label="Paid"
            hint="With the currency."
            optional
            autoComplete="off"
            error={errors['entry.price']}
            {...form.register('fuel.price')}
          />
        </FormPair>
      </Fold>
    </>
  );
}
