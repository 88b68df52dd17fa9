'use client';

import { EVENT_SORTS } from '@quartermark/engine/log';
import { useQuery } from '@tanstack/react-query';
import { Controller, type UseFormReturn, useWatch } from 'react-hook-form';
import { useTRPC } from '../client/trpc.ts';
import { Choice, DateField, TextField } from '../components/index.ts';
import { FormPair, FormSection } from '../forms/Form.tsx';
import { EventAsks } from '../requirements/EventAsks.tsx';
import { formErrors } from '../requirements/requirement-fields.ts';
import { CarTicks } from './CarTicks.tsx';
import type { Person } from './Crew.tsx';
import type { EventFields } from './event-fields.ts';
import { EVENT_NAME } from './event-words.ts';
import { Going } from './Going.tsx';
import { PlannedUse } from './PlannedUse.tsx';
import { useListedCars } from './use-listed-cars.ts';

const SORT_OPTIONS = EVENT_SORTS.map((value) => ({ value, words: EVENT_NAME[value] }));

type EventPartsProps = {
  form: UseFormReturn<EventFields>;
  errors: Record<string, string>;
  garageId: string;
  /** in which distances are told and proposed */
  unit: 'km' | 'mi';
  /** names of the cars that go already */
  names: Readonly<Record<string, string>>;
  people: readonly Person[];
};

/** The fields of an event, the same for a new one and for a change. */
export function EventParts({ form, errors, garageId, unit, names, people }: EventPartsProps) {
  const { cars: listed } = useListedCars(garageId);
  const carName = (id: string) => names[id] ?? listed.get(id)?.name ?? 'a car of this garage';
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
        <Going {...{ form, errors, garageId, carName, people }} />
      </FormSection>
      <PlannedUse form={form} errors={errors} unit={unit} garageId={garageId} carName={carName} />
      <Asks {...{ form, errors, garageId }} />
    </>
  );
}

/** What the event asks of its cars; it is said once it is known what the garage asks. */
function Asks({ form, errors, garageId }: Pick<EventPartsProps, 'form' | 'errors' | 'garageId'>) {
  const trpc = useTRPC();
  const { data } = useQuery(trpc.requirements.list.queryOptions({ garageId }));
  const sort = useWatch({ control: form.control, name: 'sort' });
  if (!data) return null;
  return (
    <Controller
      control={form.control}
      name="requirements"
      render={({ field }) => (
        <EventAsks
          {...{ garageId, sort }}
          rows={data.rows}
          fields={field.value}
          onChange={field.onChange}
          errors={formErrors(errors)}
        />
      )}
    />
  );
}
