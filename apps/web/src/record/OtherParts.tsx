'use client';

import { Controller, useWatch } from 'react-hook-form';
import { NoteField, TextField, Tick } from '../components/index.ts';
import { Fold } from '../forms/Fold.tsx';
import { FormPair } from '../forms/Form.tsx';
import { errorAt, NUMBER, type PartProps, VOLUME_UNITS } from './parts.ts';
import { Quantity } from './Quantity.tsx';

export function OdometerParts({ form, errors }: PartProps) {
  return (
    <Fold title="The hour meter too" wrong={Boolean(errorAt(errors, 'hourMeter'))}>
      <TextField
        label="Hour meter"
        optional
        suffix="h"
        {...NUMBER}
        error={errorAt(errors, 'hourMeter')}
        {...form.register('reading.hourMeter')}
      />
    </Fold>
  );
}

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
      <Controller
        control={form.control}
        name="fuel.full"
        render={({ field: { value, onChange } }) => (
          <Tick label="Filled up" checked={value} onChange={onChange} />
        )}
      />
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

export function NoteParts({ form, errors }: PartProps) {
  return (
    <NoteField label="Note" rows={6} error={errors['entry.note']} {...form.register('note')} />
  );
}
