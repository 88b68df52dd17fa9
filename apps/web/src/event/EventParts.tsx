'use client';

import { EVENT_SORTS } from '@quartermark/engine/log';
import { Controller, type UseFormReturn, useWatch } from 'react-hook-form';
import { Choice, DateField, TextField } from '../components/index.ts';
import { FormPair, FormSection } from '../forms/Form.tsx';
import { CarTicks } from './CarTicks.tsx';
import { Crew, type Person } from './Crew.tsx';
import type { EventFields } from './event-fields.ts';
import { EVENT_NAME } from './event-words.ts';
import { readTravel } from './going-fields.ts';
import { travelWords } from './going-words.ts';
import { PlannedUse } from './PlannedUse.tsx';
import { Travel } from './Travel.tsx';
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
        <Going {...{ form, errors, garageId, names, people }} />
      </FormSection>
      <PlannedUse form={form} errors={errors} unit={unit} />
    </>
  );
}

type GoingProps = Omit<EventPartsProps, 'unit'>;

/** Who drives and how they get there: folded, since an event stands without them. */
function Going({ form, errors, garageId, names, people }: GoingProps) {
  const { cars: listed } = useListedCars(garageId);
  const [chosen, travel] = useWatch({ control: form.control, name: ['cars', 'travel'] });
  const carName = (id: string) => names[id] ?? listed.get(id)?.name ?? 'a car of this garage';
  const cars = chosen.map((id) => ({ id, name: carName(id) }));
  const read = readTravel({ cars: chosen, travel }, {});
  return (
    <>
      <Controller
        control={form.control}
        name="crew"
        render={({ field }) => (
          <Crew
            {...{ garageId, cars, people }}
            crew={field.value}
            onChange={field.onChange}
            error={within(errors, 'event.crew')}
          />
        )}
      />
      <Controller
        control={form.control}
        name="travel"
        render={({ field }) => (
          <Travel
            cars={cars}
            travel={field.value}
            onChange={field.onChange}
            error={within(errors, 'event.travel')}
            now={travelWords({ cars: chosen, travel: read }, carName)}
          />
        )}
      />
    </>
  );
}

/** What is wrong anywhere beneath a path; undefined where nothing is. */
function within(errors: Record<string, string>, path: string): string | undefined {
  return Object.entries(errors).find(([field]) => field.startsWith(`${path}.`))?.[1];
}
