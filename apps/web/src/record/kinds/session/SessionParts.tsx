'use client';

import { Controller, useWatch } from 'react-hook-form';
import { SelectField, Stepper, TextField } from '../../../components/index.ts';
import { Fold } from '../../../forms/Fold.tsx';
import { FormPair } from '../../../forms/Form.tsx';
import { partOf } from '../../about.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { CornerQuantities } from '../../CornerQuantities.tsx';
import { PartChoice } from '../../PartChoice.tsx';
import {
  type AboutProps,
  DISTANCE_UNITS,
  errorWithin,
  NUMBER,
  type PartProps,
  PRESSURE_UNITS,
  TEMPERATURE_UNITS,
  VOLUME_UNITS,
} from '../../parts.ts';
import { Quantity } from '../../Quantity.tsx';

const USES = [
  { value: 'circuit', words: 'On a circuit' },
  { value: 'autocross', words: 'Autocross' },
] as const;

export function SessionParts({ form, errors, about }: AboutProps) {
  return (
    <>
      <ChoiceField
        {...{ form, errors }}
        name="session.use"
        path="use"
        label="It was"
        options={USES}
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
      <Tyres form={form} errors={errors} about={about} />
      <Event form={form} errors={errors} about={about} />
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
  'fuelUsed.text',
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
      <Quantity
        {...rows}
        name="session.fuelUsed"
        path="fuelUsed"
        label="Fuel used"
        optional
        units={VOLUME_UNITS}
      />
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

function Tyres({ form, errors, about }: AboutProps) {
  const rows = { form, errors };
  const [tyreSet, cold, hot] = useWatch({
    control: form.control,
    name: ['session.tyreSet', 'session.pressuresCold', 'session.pressuresHot'],
  });
  const read = [cold, hot].flatMap((corners) => Object.values(corners)).some(({ text }) => text);
  const set = partOf(about, tyreSet)?.name;
  return (
    <Fold
      title="Tyres and pressures"
      now={[set, read && 'pressures read'].filter(Boolean).join(', ')}
      wrong={errorWithin(errors, 'tyreSet', 'pressuresCold', 'pressuresHot') !== undefined}
    >
      <PartChoice
        {...rows}
        about={about}
        name="session.tyreSet"
        path="tyreSet"
        label="Tyre set"
        none="Not said"
        only={({ sort }) => sort === 'tyreSet' || sort === 'wheelSet'}
        optional
      />
      <CornerQuantities
        {...rows}
        name="session.pressuresCold"
        path="pressuresCold"
        label="Pressures, cold"
        units={PRESSURE_UNITS}
      />
      <CornerQuantities
        {...rows}
        name="session.pressuresHot"
        path="pressuresHot"
        label="Pressures, hot"
        units={PRESSURE_UNITS}
      />
    </Fold>
  );
}

/** The event it belongs to; absent where the calendar is empty and none was named. */
function Event({ form, errors, about }: AboutProps) {
  const chosen = useWatch({ control: form.control, name: 'session.event' });
  const lost = chosen !== '' && !about.events.some(({ id }) => id === chosen);
  if (about.events.length === 0 && !lost) return null;
  return (
    <SelectField
      label="At the event"
      optional
      options={[
        { value: '', words: 'None' },
        ...about.events.map(({ id, name }) => ({ value: id, words: name })),
        ...(lost ? [{ value: chosen, words: 'As chosen' }] : []),
      ]}
      error={errors['entry.event']}
      {...form.register('session.event')}
    />
  );
}
