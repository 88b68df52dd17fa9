'use client';

import type { ReactNode } from 'react';
import { Controller, type UseFormReturn } from 'react-hook-form';
import { Choice, SelectField, TextField } from '../components/index.ts';
import {
  DIGIT_OPTIONS,
  DIPSTICK_OPTIONS,
  DISC_OPTIONS,
  DRIVE_OPTIONS,
  FUEL_OPTIONS,
  INDUCTION_OPTIONS,
  STATUS_OPTIONS,
  SUMP_OPTIONS,
  UNIT_OPTIONS,
  WHEEL_OPTIONS,
  YES_NO_OPTIONS,
} from '../forms/car-options.ts';
import { Fold } from '../forms/Fold.tsx';
import { FormPair, FormSection } from '../forms/Form.tsx';
import type { CarFields } from './car-fields.ts';

type PartProps = { form: UseFormReturn<CarFields>; errors: Record<string, string> };

type CarPartsProps = PartProps & {
  /** a new car: its first reading stands beside the unit, and what can wait is folded away */
  firstReading?: ReactNode;
};

/** The fields of a car, the same for a new one and for a change. */
export function CarParts({ firstReading, ...props }: CarPartsProps) {
  const rest = (
    <>
      <TheEngine {...props} />
      <TheOil {...props} />
      <TheRest {...props} />
    </>
  );
  return (
    <>
      <TheCar {...props} firstReading={firstReading} />
      {firstReading ? (
        <Fold
          title="Engine, oil, wheels, brakes and lifting"
          now="all of it can be filled in later"
          wrong={Object.keys(props.errors).some((path) => path.startsWith('car.profile.'))}
        >
          {rest}
        </Fold>
      ) : (
        rest
      )}
    </>
  );
}

const FIGURES = { figures: true, inputMode: 'decimal', autoComplete: 'off' } as const;

function TheCar({ form, errors, firstReading }: CarPartsProps) {
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
            hint={
              firstReading
                ? undefined
                : 'Readings that are in the log keep the unit they were typed in.'
            }
            size="small"
            options={UNIT_OPTIONS}
            value={field.value}
            onChange={field.onChange}
            error={errors['car.unit']}
          />
        )}
      />
      {firstReading}
      <FormPair>
        <SelectField
          label="Digits before it starts again at zero"
          hint="Without tenths. Only needed to recognise a roll-over."
          options={DIGIT_OPTIONS}
          error={errors['car.odoDigits']}
          {...form.register('odoDigits')}
        />
        <SelectField
          label="Where it stands"
          hint="A lay-up, lending and selling are entries; they say it by themselves."
          options={STATUS_OPTIONS}
          error={errors['car.profile.status']}
          {...form.register('status')}
        />
      </FormPair>
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
        <TextField
          label="Your limit of oil use"
          hint="Where you want something done. 1 US qt per 1,000 mi is 0.59."
          optional
          suffix="L per 1,000 km"
          {...FIGURES}
          error={errors['car.profile.oilLimitLPer1000Km']}
          {...form.register('oilLimitLPer1000Km')}
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
