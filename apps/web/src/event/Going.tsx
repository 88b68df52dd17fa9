'use client';

import { Controller, type UseFormReturn, useWatch } from 'react-hook-form';
import { Crew, type Person } from './Crew.tsx';
import type { EventFields } from './event-fields.ts';
import { readTravel } from './going-fields.ts';
import { travelWords } from './going-words.ts';
import { Travel } from './Travel.tsx';

type GoingProps = {
  form: UseFormReturn<EventFields>;
  errors: Record<string, string>;
  garageId: string;
  people: readonly Person[];
  carName: (id: string) => string;
};

/** Who drives and how they get there: folded, since an event stands without them. */
export function Going({ form, errors, garageId, carName, people }: GoingProps) {
  const [chosen, travel] = useWatch({ control: form.control, name: ['cars', 'travel'] });
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
