'use client';

import { EVENT_SORTS } from '@quartermark/engine/log';
import { Controller, type UseFormReturn } from 'react-hook-form';
import { Choice, DateField, TextField } from '../components/index.ts';
import { FormPair, FormSection } from '../forms/Form.tsx';
import { CarTicks } from './CarTicks.tsx';
import type { EventFields } from './event-fields.ts';
import { EVENT_NAME } from './event-words.ts';
import { PlannedUse } from './PlannedUse.tsx';

const SORT_OPTIONS = EVENT_SORTS.map((value) => ({ value, words: EVENT_NAME[value] }));

type EventPartsProps = {
  form: UseFormReturn<EventFields>;
  errors: Record<string, string>;
  garageId: string;
  /** in which distances are told and proposed */
  unit: 'km' | 'mi';
  /** names of the cars that go already */
  names: Readonly<Record<string, string>>;
};

/** The fields of an event, the same for a new one and for a change. */
export function EventParts({ form, errors, garageId, unit, names }: EventPartsProps) {
  return (
    <>
      <FormSection title="What and when">
        <TextField
          label="Name"
          autoComplete="off"
          error={errors['event.name']}
          {...form.register('name')}
        />
        <Controller
          control={form.control}
          name="sort"
          render={({ field }) => (
            <Choice
              label="Sort"
              size="small"
              options={SORT_OPTIONS}
              value={field.value}
              onChange={field.onChange}
              error={errors['event.sort']}
            />
          )}
        />
        <FormPair>
          <DateField label="First day" error={errors['event.start']} {...form.register('start')} />
          <DateField
            label="Last day"
            optional
            error={errors['event.end']}
            {...form.register('end')}
          />
        </FormPair>
        <TextField
          label="Place"
          optional
          autoComplete="off"
          error={errors['event.place']}
          {...form.register('place')}
        />
      </FormSection>
      <FormSection title="Which cars go">
        <Controller
          control={form.control}
          name="cars"
          render={({ field }) => (
            <CarTicks
              garageId={garageId}
              names={names}
              chosen={field.value}
              onChange={field.onChange}
            />
          )}
        />
      </FormSection>
      <PlannedUse form={form} errors={errors} unit={unit} />
    </>
  );
}
