'use client';

import type { GarageView } from '@quartermark/api/client';
import type { Route } from 'next';
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { type UseFormReturn, useForm, useWatch } from 'react-hook-form';
import { Button, ButtonLink, DateField, Notice, TextField } from '../components/index.ts';
import { Form, FormPair } from '../forms/Form.tsx';
import { useDraft } from '../forms/use-draft.ts';
import { useLocalTrouble } from '../forms/use-local-trouble.ts';
import { CarParts } from './CarParts.tsx';
import { type CarFields, emptyCar, readCar } from './car-fields.ts';
import { type ReadingFields, useAddCar } from './use-add-car.ts';

/** Puts a car into the garage; what is to be watched on it comes next. */
export function AddCarForm({ garage }: { garage: GarageView }) {
  const router = useRouter();
  const form = useForm<CarFields>({ defaultValues: emptyCar(garage.distanceUnit) });
  const reading = useForm<ReadingFields>({ defaultValues: { text: '', on: garage.today } });
  const forgetCar = useDraft(`car-add:${garage.id}`, form);
  const forgetReading = useDraft(`car-add-reading:${garage.id}`, reading);
  const [asked, setAsked] = useState(false);
  const wrong = useLocalTrouble(form, asked, readCar);
  const added = useAddCar(garage, forgetCar);
  const { busy, savedCarId } = added;

  async function save(fields: CarFields) {
    const read = readCar(fields);
    setAsked(true);
    if ('problems' in read) {
      if (read.problems['car.name']) form.setFocus('name');
      return added.clear();
    }
    const carId = await added.add(read.car, reading.getValues());
    if (carId === null) return;
    forgetReading();
    router.push(`/g/${garage.id}/car/${carId}/begin` as Route);
  }

  const trouble = wrong ?? added.trouble;
  const errors = trouble?.fields ?? {};
  return (
    <Form
      label="Add a car"
      onSubmit={form.handleSubmit(save)}
      trouble={trouble}
      actions={
        <Button type="submit" look="main" busy={busy} busyWords="Saving …">
          {savedCarId ? 'Save the reading' : 'Add the car'}
        </Button>
      }
    >
      {savedCarId && trouble ? (
        <Notice
          title="The car is in the garage; only its reading is not saved yet."
          actions={
            <ButtonLink href={`/g/${garage.id}/car/${savedCarId}/begin` as Route}>
              Go on without it
            </ButtonLink>
          }
        >
          Mend what stands beside the reading and press again.
        </Notice>
      ) : null}
      <CarParts
        form={form}
        errors={errors}
        firstReading={<FirstReading car={form} form={reading} errors={errors} />}
      />
    </Form>
  );
}

type FirstReadingProps = {
  car: UseFormReturn<CarFields>;
  form: UseFormReturn<ReadingFields>;
  errors: Record<string, string>;
};

function FirstReading({ car, form, errors }: FirstReadingProps) {
  const unit = useWatch({ control: car.control, name: 'unit' });
  return (
    <FormPair>
      <TextField
        label="What it shows now"
        optional
        suffix={unit}
        figures
        inputMode="decimal"
        autoComplete="off"
        error={errors['entry.odometer.text'] ?? errors['entry.odometer']}
        {...form.register('text')}
      />
      <DateField label="Read on" error={errors['entry.on']} {...form.register('on')} />
    </FormPair>
  );
}
