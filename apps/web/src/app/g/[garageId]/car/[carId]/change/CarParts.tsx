'use client';

import { Controller, type UseFormReturn } from 'react-hook-form';
import { Choice, SelectField, TextField } from '../../../../../../components/index.ts';
import {
  DIGIT_OPTIONS,
  DIPSTICK_OPTIONS,
  DISC_OPTIONS,
  DRIVE_OPTIONS,
  FUEL_OPTIONS,
  INDUCTION_OPTIONS,
  SUMP_OPTIONS,
  UNIT_OPTIONS,
  WHEEL_OPTIONS,
  YES_NO_OPTIONS,
} from '../../../../../../forms/car-options.ts';
import { FormPair, FormSection } from '../../../../../../forms/Form.tsx';
import type { ChangeFields } from './change-fields.ts';

type PartProps = { form: UseFormReturn<ChangeFields>; errors: Record<string, string> };

/** The fields of a car that is in the garage. */
export function CarParts(props: PartProps) {
  return (
    <>
      <TheCar {...props} />
      <TheEngine {...props} />
      <TheOil {...props} />
      <TheRest {...props} />
    </>
  );
}

const FIGURES = { figures: true, inputMode: 'decimal', autoComplete: 'off' } as const;

function TheCar({ form, errors }: PartProps) {
  return (
    <FormSection title="The car">
      <TextField
        label="Name"
        hint="What it is called in the garage."
        autoComplete="off"
        error={errors['car.name']}
        {...form.register('name')}
      />
      <Controller
        control={form.control}
        name="unit"
        render={({ field }) => (
          <Choice
            label="The odometer counts"
            hint="Readings that are in the log keep the unit they were typed in."
            size="small"
            options={UNIT_OPTIONS}
            value={field.value}
            onChange={field.onChange}
            error={errors['car.unit']}
          />
        )}
      />
      <SelectField
        label="Digits before it starts again at zero"
        hint="Without tenths. Only needed to recognise a roll-over."
        options={DIGIT_OPTIONS}
        error={errors['car.odoDigits']}
        {...form.register('odoDigits')}
      />
    </FormSection>
  );
}

function TheEngine({ form, errors }: PartProps) {
  return (
    <FormSection title="The engine">
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
          label="Driven by"
          options={DRIVE_OPTIONS}
          error={errors['car.profile.drive']}
          {...form.register('drive')}
        />
        <SelectField
          label="Fuel"
          options={FUEL_OPTIONS}
          error={errors['car.profile.fuel']}
          {...form.register('fuel')}
        />
        <TextField
          label="Octane"
          hint="As on the filler cap."
          optional
          {...FIGURES}
          error={errors['car.profile.octane']}
          {...form.register('octane')}
        />
        <TextField
          label="Gearbox"
          optional
          autoComplete="off"
          error={errors['car.profile.gearbox']}
          {...form.register('gearbox')}
        />
      </FormPair>
    </FormSection>
  );
}

function TheOil({ form, errors }: PartProps) {
  return (
    <FormSection title="The oil">
      <p>
        The litres between the two marks stand in the manual; they turn a mark on the stick into a
        volume. If they do not: pour in a known amount by the manual’s procedure and look how far
        the level rises. Leave it empty if you do not know it: a guess is worse.
      </p>
      <FormPair>
        <TextField
          label="Oil between MIN and MAX"
          optional
          suffix="L"
          {...FIGURES}
          error={errors['car.profile.oilSpanL']}
          {...form.register('oilSpanL')}
        />
        <TextField
          label="Oil in the engine at MAX"
          optional
          suffix="L"
          {...FIGURES}
          error={errors['car.profile.oilCapacityL']}
          {...form.register('oilCapacityL')}
        />
        <SelectField
          label="How the stick is read"
          hint="As the manual says. Many dry sumps read falsely low when cold."
          options={DIPSTICK_OPTIONS}
          error={errors['car.profile.dipstick.state']}
          {...form.register('dipstick')}
        />
        <TextField
          label="Minutes after stopping"
          optional
          suffix="min"
          {...FIGURES}
          error={errors['car.profile.dipstick.minutesAfterStop']}
          {...form.register('minutesAfterStop')}
        />
        <TextField
          label="Oil grade"
          hint="Such as 5W-40."
          optional
          autoComplete="off"
          error={errors['car.profile.oilGrade']}
          {...form.register('oilGrade')}
        />
        <TextField
          label="Oil approval"
          hint="The norm the manual asks for."
          optional
          autoComplete="off"
          error={errors['car.profile.oilApproval']}
          {...form.register('oilApproval')}
        />
      </FormPair>
    </FormSection>
  );
}

function TheRest({ form, errors }: PartProps) {
  return (
    <FormSection title="Wheels, brakes and lifting">
      <FormPair>
        <SelectField
          label="Wheels held by"
          options={WHEEL_OPTIONS}
          error={errors['car.profile.wheelFixing']}
          {...form.register('wheelFixing')}
        />
        <SelectField
          label="Brake discs"
          options={DISC_OPTIONS}
          error={errors['car.profile.discMaterial']}
          {...form.register('discMaterial')}
        />
        <SelectField
          label="Air suspension"
          options={YES_NO_OPTIONS}
          error={errors['car.profile.airSuspension']}
          {...form.register('airSuspension')}
        />
        <TextField
          label="Noise it was measured at"
          optional
          suffix="dB"
          {...FIGURES}
          error={errors['car.profile.noiseDb']}
          {...form.register('noiseDb')}
        />
      </FormPair>
      <TextField
        label="Lifting points"
        hint="As the manual shows them. Never go under a car that stands on a jack alone; air suspension may sink or rise unless it is set for lifting."
        optional
        autoComplete="off"
        error={errors['car.profile.liftPoints']}
        {...form.register('liftPoints')}
      />
    </FormSection>
  );
}
