'use client';

import { Controller, useWatch } from 'react-hook-form';
import { Stepper, TextField } from '../../../components/index.ts';
import { Fold } from '../../../forms/Fold.tsx';
import { FormPair } from '../../../forms/Form.tsx';
import { ChoiceField } from '../../ChoiceField.tsx';
import { DISTANCE_UNITS, NUMBER, type PartProps, TEMPERATURE_UNITS } from '../../parts.ts';
import { Quantity } from '../../Quantity.tsx';

const USES = [
  { value: 'circuit', words: 'On a circuit' },
  { value: 'autocross', words: 'Autocross' },
] as const;

export function SessionParts({ form, errors }: PartProps) {
  return (
    <>
      <ChoiceField {...{ form, errors }} name="session.use" path="use" label="It was" options={USES} />
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
