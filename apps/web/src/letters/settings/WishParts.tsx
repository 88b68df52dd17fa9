'use client';

import type { WishView } from '@quartermark/api/client';
import { Controller, type UseFormReturn, useWatch } from 'react-hook-form';
import { Choice, DateField, SelectField, Tick } from '../../components/index.ts';
import { FormSection } from '../../forms/Form.tsx';
import { Ticks } from '../../record/Ticks.tsx';
import { WEEKDAYS } from '../letters-words.ts';
import type { WishFields } from './wish-fields.ts';

type WishPartsProps = {
  form: UseFormReturn<WishFields>;
  errors: Record<string, string>;
  view: WishView;
};

const RHYTHMS = [
  { value: 'night', words: 'Every night' },
  { value: 'week', words: 'Once a week' },
] as const;
const CARS = [
  { value: 'all', words: 'All cars' },
  { value: 'some', words: 'Only some' },
] as const;
const ON = WEEKDAYS.map((words, at) => ({ value: String(at + 1), words }));

/** When letters come, where to, and of which cars. */
export function WishParts(props: WishPartsProps) {
  const { form, errors } = props;
  const { control, register } = form;
  const rhythm = useWatch({ control, name: 'rhythm' });
  return (
    <>
      <FormSection title="When a letter comes">
        <Controller
          control={control}
          name="rhythm"
          render={({ field }) => (
            <Choice
              label="How often"
              size="small"
              options={RHYTHMS}
              value={field.value}
              onChange={field.onChange}
              error={errors['wish.rhythm']}
            />
          )}
        />
        {rhythm === 'week' ? (
          <SelectField
            label="On which day"
            options={ON}
            error={errors['wish.rhythm.on']}
            {...register('on')}
          />
        ) : null}
        <Ticked
          {...props}
          name="onlyIfNew"
          label="Only if something is new"
          hint="Reminders of what still stands do not count as new. Without this, a quiet night has a letter that says so."
        />
        <Ticked
          {...props}
          name="beforeEvents"
          label="On the Thursday before an event weekend"
          hint="How each car stands that goes, whatever the rhythm."
        />
        <DateField
          label="Paused until"
          hint="No letter up to this day, itself included. Empty: not paused."
          optional
          error={errors['wish.pausedUntil']}
          {...register('pausedUntil')}
        />
      </FormSection>
      <FormSection title="Where it comes, and of which cars">
        <ByMail {...props} />
        <OfCars {...props} />
      </FormSection>
    </>
  );
}

type TickedProps = WishPartsProps & {
  name: 'onlyIfNew' | 'beforeEvents';
  label: string;
  hint: string;
};

function Ticked({ form, name, label, hint }: TickedProps) {
  return (
    <Controller
      control={form.control}
      name={name}
      render={({ field }) => (
        <Tick
          label={label}
          hint={hint}
          name={name}
          checked={field.value}
          onChange={field.onChange}
        />
      )}
    />
  );
}

/** Each letter lies in the garage in any case. */
function ByMail({ form, errors, view: { canMail, to, garage } }: WishPartsProps) {
  const notYet = garage.demo
    ? 'From the demo garage no mail leaves: letters lie here.'
    : 'No mail server is set in this garage, so for now letters lie here alone.';
  return (
    <Controller
      control={form.control}
      name="mail"
      render={({ field }) => (
        <Choice
          label="Where to"
          hint={canMail ? undefined : notYet}
          size="small"
          options={[
            { value: 'mail', words: canMail ? `Here and at ${to}` : 'Here and by mail' },
            { value: 'here', words: 'Only here' },
          ]}
          value={field.value}
          onChange={field.onChange}
          error={errors['wish.mail']}
        />
      )}
    />
  );
}

function OfCars({ form, errors, view }: WishPartsProps) {
  const which = useWatch({ control: form.control, name: 'cars' });
  return (
    <>
      <Controller
        control={form.control}
        name="cars"
        render={({ field }) => (
          <Choice
            label="Of which cars"
            size="small"
            options={CARS}
            value={field.value}
            onChange={field.onChange}
            error={which === 'all' ? errors['wish.cars'] : undefined}
          />
        )}
      />
      {which === 'some' ? (
        <Controller
          control={form.control}
          name="some"
          render={({ field }) => (
            <Ticks
              legend="These cars"
              rows={view.cars.map(({ carId, name }) => ({ id: carId, words: name }))}
              done={field.value}
              onChange={field.onChange}
              error={errors['wish.cars']}
            />
          )}
        />
      ) : null}
    </>
  );
}
