'use client';

import { Controller, useWatch } from 'react-hook-form';
import { Choice, DateField, SelectField, Stepper, TextField } from '../components/index.ts';
import { Fold } from '../forms/Fold.tsx';
import { FormPair } from '../forms/Form.tsx';
import { DISTANCE_UNITS, NUMBER, type PartProps, TEMPERATURE_UNITS } from './parts.ts';
import { Quantity } from './Quantity.tsx';

export function DriveParts({ form, errors }: PartProps) {
  const use = useWatch({ control: form.control, name: 'drive.use' });
  return (
    <>
      <Controller
        control={form.control}
        name="drive.use"
        render={({ field: { value, onChange } }) => (
          <Choice
            label="It was"
            options={[
              { value: 'road', words: 'On the road' },
              { value: 'touring', words: 'A road trip', hint: 'One or more days away' },
            ]}
            value={value}
            onChange={onChange}
          />
        )}
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

export function SessionParts({ form, errors }: PartProps) {
  return (
    <>
      <Controller
        control={form.control}
        name="session.use"
        render={({ field: { value, onChange } }) => (
          <Choice
            label="It was"
            options={[
              { value: 'circuit', words: 'On a circuit' },
              { value: 'autocross', words: 'Autocross' },
            ]}
            value={value}
            onChange={onChange}
          />
        )}
      />
      <Controller
        control={form.control}
        name="session.sessions"
        render={({ field: { value, onChange } }) => (
          <Stepper
            label="Sessions"
            hint="On a circuit one is a stint, often 20 minutes; at autocross it is the day’s runs."
            min={1}
            max={100}
            value={value}
            onChange={onChange}
            error={errors['entry.sessions']}
          />
        )}
      />
      <SessionDetails form={form} errors={errors} />
    </>
  );
}

const DETAILS = [
  'venue',
  'distance.text',
  'hours',
  'laps',
  'oilTempPeak.text',
  'coolantTempPeak.text',
  'remarks',
];

function SessionDetails({ form, errors }: PartProps) {
  const venue = useWatch({ control: form.control, name: 'session.venue' });
  const rows = { form, errors };
  return (
    <Fold title="More about it" now={venue} wrong={DETAILS.some((path) => errors[`entry.${path}`])}>
      <TextField
        label="Where"
        optional
        autoComplete="off"
        error={errors['entry.venue']}
        {...form.register('session.venue')}
      />
      <Quantity
        {...rows}
        name="session.distance"
        path="distance"
        label="Distance"
        optional
        units={DISTANCE_UNITS}
      />
      <FormPair>
        <TextField
          label="Hours of running"
          hint="All sessions together."
          optional
          suffix="h"
          {...NUMBER}
          error={errors['entry.hours']}
          {...form.register('session.hours')}
        />
        <TextField
          label="Laps"
          hint="All sessions together."
          optional
          {...NUMBER}
          error={errors['entry.laps']}
          {...form.register('session.laps')}
        />
      </FormPair>
      <FormPair>
        <Quantity
          {...rows}
          name="session.oilTempPeak"
          path="oilTempPeak"
          label="Hottest oil"
          optional
          units={TEMPERATURE_UNITS}
        />
        <Quantity
          {...rows}
          name="session.coolantTempPeak"
          path="coolantTempPeak"
          label="Hottest coolant"
          optional
          units={TEMPERATURE_UNITS}
        />
      </FormPair>
      <TextField
        label="Remarks"
        hint="One line on how it went."
        optional
        autoComplete="off"
        error={errors['entry.remarks']}
        {...form.register('session.remarks')}
      />
    </Fold>
  );
}

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
            hint="Runs down the strip that day."
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
