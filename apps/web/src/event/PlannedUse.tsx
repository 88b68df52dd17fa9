'use client';

import { eventInput, USE_MEASURES, type UseMeasure } from '@quartermark/engine/log';
import { Controller, type UseFormReturn, useWatch } from 'react-hook-form';
import { Choice, QuantityField, TextField } from '../components/index.ts';
import { FormPair, FormSection } from '../forms/Form.tsx';
import { type EventFields, readEvent } from './event-fields.ts';
import { ProposedUse } from './ProposedUse.tsx';
import { shownAmount } from './planned-use-fields.ts';
import { ATTENDANCE, attendWords, countedSentence } from './planned-use-words.ts';

const UNITS = [
  { value: 'km', words: 'km' },
  { value: 'mi', words: 'miles' },
] as const;

type PlannedUseProps = {
  form: UseFormReturn<EventFields>;
  errors: Record<string, string>;
  unit: 'km' | 'mi';
  garageId: string;
  carName: (id: string) => string;
};

/** What each car that goes is to do there, and what of it counts ahead. */
export function PlannedUse({ form, errors, unit, ...proposed }: PlannedUseProps) {
  const fields = useWatch({ control: form.control }) as EventFields;
  const measures = USE_MEASURES[fields.sort];
  return (
    <FormSection title="What each car does there">
      <p>
        All days together.
        {DRIVEN_TO.includes(fields.sort)
          ? ' The way there and back is everyday use and does not belong here.'
          : ''}
      </p>
      <ProposedUse form={form} {...proposed} />
      <FormPair>
        {measures.map((measure, at) => (
          <Amount
            key={measure}
            form={form}
            measure={measure}
            fields={fields}
            first={at === 0 && fields.sort !== 'meet'}
            error={errors[`event.use.${measure}.text`] ?? errors[`event.use.${measure}`]}
          />
        ))}
      </FormPair>
      <Controller
        control={form.control}
        name="attend"
        render={({ field }) => (
          <Choice
            label="How likely is it that they go?"
            size="small"
            options={attendOptions(field.value)}
            value={field.value}
            onChange={field.onChange}
            error={errors['event.attend']}
          />
        )}
      />
      <p aria-live="polite">{counted(fields, unit)}</p>
    </FormSection>
  );
}

/** To these one drives, or is trailered; the drive is not what is done there. */
const DRIVEN_TO: readonly EventFields['sort'][] = ['circuit', 'autocross', 'dragStrip'];

const LABEL: Readonly<Record<UseMeasure, string>> = {
  sessions: 'Sessions',
  launches: 'Launches',
  distance: 'Distance',
  hours: 'Hours of driving',
};

/** Beside the first field alone; what is usual is common practice, no source. */
const USUAL: Readonly<Record<EventFields['sort'], string>> = {
  circuit: 'Usually 4 a day, of some 20 minutes each.',
  autocross: 'One day’s runs count as one session.',
  dragStrip: 'Usually 6 a day; every start under full power is one.',
  roadTrip: 'Usually 250 km (150 miles) a day.',
  meet: '',
};

type AmountProps = {
  form: PlannedUseProps['form'];
  measure: UseMeasure;
  fields: EventFields;
  first: boolean;
  error: string | undefined;
};

function Amount({ form, measure, fields, first, error }: AmountProps) {
  const text = shownAmount(fields, measure);
  const set = (typed: string) => form.setValue(`use.${measure}`, typed, { shouldDirty: true });
  const said = {
    label: LABEL[measure],
    hint: first ? USUAL[fields.sort] : undefined,
    optional: !first,
    error,
  };
  if (measure === 'distance')
    return (
      <QuantityField
        {...said}
        name="use.distance"
        units={UNITS}
        value={{ text, unit: fields.use.unit }}
        onChange={(typed) => {
          if (typed.text !== text) set(typed.text);
          form.setValue('use.unit', typed.unit, { shouldDirty: true });
        }}
      />
    );
  return (
    <TextField
      {...said}
      name={`use.${measure}`}
      figures
      inputMode="decimal"
      autoComplete="off"
      value={text}
      onChange={(event) => set(event.currentTarget.value)}
    />
  );
}

/** A value that none of the words stands for, from elsewhere, stays as one more choice. */
function attendOptions(value: string) {
  const known = ATTENDANCE.some((each) => each.value === value);
  return known ? ATTENDANCE : [...ATTENDANCE, { value, words: attendWords(Number(value)) }];
}

/** Of what stands in the form; while a field of it cannot be read, nothing is claimed. */
function counted(fields: EventFields, unit: 'km' | 'mi'): string {
  const read = readEvent({ ...fields, name: 'x', start: fields.start || '2000-01-01', end: '' });
  const event = 'event' in read ? eventInput.safeParse(read.event).data : undefined;
  return event
    ? countedSentence(event, unit)
    : 'What is counted is said once the amounts can be read.';
}
