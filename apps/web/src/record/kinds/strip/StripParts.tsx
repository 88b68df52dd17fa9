'use client';

import { Controller, useWatch } from 'react-hook-form';
import { SelectField, Stepper, TextField } from '../../../components/index.ts';
import { Fold } from '../../../forms/Fold.tsx';
import { FormPair } from '../../../forms/Form.tsx';
import { NUMBER, type PartProps } from '../../parts.ts';

export function StripParts({ form, errors }: PartProps) {
  const venue = useWatch({ control: form.control, name: 'strip.venue' });
  return (
    <>
      <Controller
        control={form.control}
        name="strip.passes"
        render={({ field: { value, onChange } }) => (
          <Stepper
            label="Passes"
            hint="Runs down the drag strip that day."
            min={1}
            max={100}
            value={value}
            onChange={onChange}
            error={errors['entry.passes']}
          />
        )}
      />
      <Fold
        title="More about the day"
        now={venue}
        wrong={['launches', 'venue', 'weather'].some((name) => errors[`entry.${name}`])}
      >
        <TextField
          label="Launches"
          hint="Starts under full power; as many as passes if left empty."
          optional
          {...NUMBER}
          error={errors['entry.launches']}
          {...form.register('strip.launches')}
        />
        <TextField
          label="Where"
          optional
          autoComplete="off"
          error={errors['entry.venue']}
          {...form.register('strip.venue')}
        />
        <TextField
          label="Weather"
          optional
          autoComplete="off"
          error={errors['entry.weather']}
          {...form.register('strip.weather')}
        />
      </Fold>
      <Passes form={form} errors={errors} />
    </>
  );
}

const LANES = [
  { value: '', words: 'Not said' },
  { value: 'left', words: 'Left' },
  { value: 'right', words: 'Right' },
] as const;
const PASS_FIGURES = [
  { name: 'reactionS', label: 'Reaction', suffix: 's' },
  { name: 'at60ftS', label: '60 ft', suffix: 's' },
  { name: 'at8thS', label: '1/8 mile', suffix: 's' },
  { name: 'at8thKmh', label: 'Speed at 1/8 mile', suffix: 'km/h' },
  { name: 'at4thS', label: '1/4 mile', suffix: 's' },
  { name: 'at4thKmh', label: 'Speed at 1/4 mile', suffix: 'km/h' },
  { name: 'dialInS', label: 'Dial-in', suffix: 's' },
] as const;

/** So many passes are written out one by one; a day of more is counted only. */
const WRITTEN_OUT_MAX = 20;

function Passes({ form, errors }: PartProps) {
  const passes = useWatch({ control: form.control, name: 'strip.passes' });
  const count = passes !== null && Number.isInteger(passes) ? Math.min(passes, WRITTEN_OUT_MAX) : 0;
  return Array.from({ length: Math.max(0, count) }, (_, at) => at).map((at) => (
    <Fold
      key={at}
      title={`Pass ${at + 1}`}
      wrong={Object.keys(errors).some((path) => path.startsWith(`entry.passes.${at}.`))}
    >
      <SelectField label="Lane" options={LANES} {...form.register(`strip.details.${at}.lane`)} />
      <FormPair>
        {PASS_FIGURES.map(({ name, label, suffix }) => (
          <TextField
            key={name}
            label={label}
            optional
            suffix={suffix}
            {...NUMBER}
            error={errors[`entry.passes.${at}.${name}`]}
            {...form.register(`strip.details.${at}.${name}`)}
          />
        ))}
      </FormPair>
    </Fold>
  ));
}
