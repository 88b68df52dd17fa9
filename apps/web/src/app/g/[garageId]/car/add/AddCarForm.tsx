'use client';

import type { GarageView } from '@quartermark/api/client';
import type { Route } from 'next';
import { useRouter } from 'next/navigation';
import { Controller, type UseFormReturn, useForm } from 'react-hook-form';
import {
  Button,
  ButtonLink,
  Choice,
  DateField,
  Notice,
  SelectField,
  TextField,
} from '../../../../../components/index.ts';
import {
  DIGIT_OPTIONS,
  FUEL_OPTIONS,
  INDUCTION_OPTIONS,
  SUMP_OPTIONS,
  UNIT_OPTIONS,
} from '../../../../../forms/car-options.ts';
import { Form, FormPair, FormSection } from '../../../../../forms/Form.tsx';
import { useDraft } from '../../../../../forms/use-draft.ts';
import { type CarFields, emptyCar, spanProblem } from './car-fields.ts';
import { useAddCar } from './use-add-car.ts';

export function AddCarForm({ garage }: { garage: GarageView }) {
  const router = useRouter();
  const form = useForm<CarFields>({ defaultValues: emptyCar(garage.distanceUnit, garage.today) });
  const forget = useDraft(`car-add:${garage.id}`, form);
  const { add, busy, trouble, savedCarId } = useAddCar(garage, forget);

  async function save(fields: CarFields) {
    const carId = await add(fields);
    if (carId === null) return;
    router.push(`/g/${garage.id}/car/${carId}` as Route);
  }

  const errors = { ...trouble?.fields };
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
            <ButtonLink href={`/g/${garage.id}/car/${savedCarId}` as Route}>
              Go on without it
            </ButtonLink>
          }
        >
          Mend what stands beside the reading and press again.
        </Notice>
      ) : null}
      <FormSection title="The car">
        <TextField
          label="Name"
          hint="What it is called in the garage."
          error={errors['car.name'] ?? form.formState.errors.name?.message}
          {...form.register('name', {
            validate: (name) => name.trim() !== '' || 'Fill in a name, such as what you call it.',
          })}
        />
        <Odometer form={form} errors={errors} />
      </FormSection>
      <Profile form={form} errors={errors} />
    </Form>
  );
}

type PartProps = { form: UseFormReturn<CarFields>; errors: Record<string, string> };

function Odometer({ form, errors }: PartProps) {
  const unit = form.watch('unit');
  return (
    <>
      <Controller
        control={form.control}
        name="unit"
        render={({ field }) => (
          <Choice
            label="The odometer counts"
            size="small"
            options={UNIT_OPTIONS}
            value={field.value}
            onChange={field.onChange}
            error={errors['car.unit']}
          />
        )}
      />
      <FormPair>
        <TextField
          label="What it shows now"
          optional
          suffix={unit}
          figures
          inputMode="decimal"
          autoComplete="off"
          error={errors['entry.odometer.text'] ?? errors['entry.odometer']}
          {...form.register('reading')}
        />
        <DateField label="Read on" error={errors['entry.on']} {...form.register('readOn')} />
      </FormPair>
      <SelectField
        label="Digits before it starts again at zero"
        hint="Without tenths. Only needed to recognise a roll-over."
        options={DIGIT_OPTIONS}
        error={errors['car.odoDigits']}
        {...form.register('odoDigits')}
      />
    </>
  );
}

function Profile({ form, errors }: PartProps) {
  return (
    <FormSection title="The engine">
      <p>All of this may stay empty and be filled in later from the manual.</p>
      <FormPair>
        <SelectField
          label="Sump"
          options={SUMP_OPTIONS}
          error={errors['car.profile.sump']}
          {...form.register('sump')}
        />
        <SelectField
          label="Induction"
          options={INDUCTION_OPTIONS}
          error={errors['car.profile.induction']}
          {...form.register('induction')}
        />
        <SelectField
          label="Fuel"
          options={FUEL_OPTIONS}
          error={errors['car.profile.fuel']}
          {...form.register('fuel')}
        />
        <TextField
          label="Oil between MIN and MAX"
          optional
          suffix="L"
          figures
          inputMode="decimal"
          autoComplete="off"
          error={errors['car.profile.oilSpanL'] ?? form.formState.errors.oilSpan?.message}
          {...form.register('oilSpan', { validate: (typed) => spanProblem(typed) ?? true })}
        />
      </FormPair>
      <p>
        The litres between the two marks on the dipstick stand in the manual; they turn a mark on
        the stick into a volume. Leave it empty if you do not know it: a guess is worse.
      </p>
    </FormSection>
  );
}
