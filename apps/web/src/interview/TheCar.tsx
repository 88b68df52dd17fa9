'use client';

import { USE_CLASSES } from '@quartermark/engine/log';
import { Controller, type UseFormReturn } from 'react-hook-form';
import { Choice, TextField } from '../components/index.ts';
import { FormSection } from '../forms/Form.tsx';
import { USE_NAME } from '../items/use-words.ts';
import type { BeginFields } from './begin-fields.ts';
import { Several } from './Several.tsx';

const SUMPS = [
  { value: 'wet', words: 'Wet sump' },
  { value: 'dry', words: 'Dry sump' },
] as const;
const INDUCTIONS = [
  { value: 'natural', words: 'Natural' },
  { value: 'forced', words: 'Turbo or supercharger' },
] as const;
const GEARBOXES = [
  { value: 'manual', words: 'Manual' },
  { value: 'automatic', words: 'Automatic' },
  { value: 'dual clutch', words: 'Dual clutch' },
] as const;

type TheCarProps = {
  form: UseFormReturn<BeginFields>;
  errors: Record<string, string>;
  unit: 'km' | 'mi';
};

/** The few things that decide what runs out on a car. All of it may stay open. */
export function TheCar({ form, errors, unit }: TheCarProps) {
  const { control } = form;
  return (
    <FormSection title="The car, in a few taps">
      <Controller
        control={control}
        name="sump"
        render={({ field: { value, onChange } }) => (
          <Choice label="Sump" options={SUMPS} value={value || null} onChange={onChange} />
        )}
      />
      <Controller
        control={control}
        name="induction"
        render={({ field: { value, onChange } }) => (
          <Choice
            label="Induction"
            options={INDUCTIONS}
            value={value || null}
            onChange={onChange}
          />
        )}
      />
      <Controller
        control={control}
        name="gearbox"
        render={({ field: { value, onChange } }) => (
          <Choice
            label="Gearbox"
            hint={
              value === '' || GEARBOXES.some((known) => known.value === value)
                ? undefined
                : `Now: ${value}.`
            }
            options={GEARBOXES}
            value={GEARBOXES.find((known) => known.value === value)?.value ?? null}
            onChange={onChange}
          />
        )}
      />
      <Controller
        control={control}
        name="uses"
        render={({ field: { value, onChange } }) => (
          <Several
            label="What it is used for"
            hint="As many as apply."
            options={USE_CLASSES.map((use) => ({ value: use, words: USE_NAME[use] }))}
            chosen={USE_CLASSES.filter((use) => value[use])}
            onPress={(use) => onChange({ ...value, [use]: !value[use] })}
          />
        )}
      />
      <TextField
        label="The odometer today"
        hint="For what is counted from today. It is kept with each item, not as an entry."
        optional
        suffix={unit}
        figures
        inputMode="decimal"
        autoComplete="off"
        error={errors.odometer}
        {...form.register('odometer')}
      />
    </FormSection>
  );
}
