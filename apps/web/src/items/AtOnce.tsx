'use client';

import { Controller, type UseFormReturn, useWatch } from 'react-hook-form';
import { TextField, Tick } from '../components/index.ts';
import { Fold } from '../forms/Fold.tsx';
import { INCIDENT_SORTS } from './at-once-fields.ts';
import styles from './HardUse.module.css';
import type { ItemFields } from './item-fields.ts';
import { INCIDENT_NAME } from './use-words.ts';

type AtOnceProps = { form: UseFormReturn<ItemFields>; errors: Record<string, string> };

/** What makes the item due at once, and whether doing it once is the end of it. */
export function AtOnce({ form, errors }: AtOnceProps) {
  const now = useNow(form);
  return (
    <Fold
      title="Due at once, or done only once"
      now={now}
      wrong={Object.keys(errors).some(
        (field) => field.startsWith('item.triggers') || field === 'item.once',
      )}
    >
      <fieldset className={styles.classes}>
        <legend>Due at once after</legend>
        {INCIDENT_SORTS.map((sort) => (
          <Controller
            key={sort}
            control={form.control}
            name={`atOnce.incidents.${sort}`}
            render={({ field }) => (
              <Tick
                label={INCIDENT_NAME[sort]}
                name={field.name}
                checked={field.value}
                onChange={field.onChange}
              />
            )}
          />
        ))}
        <Controller
          control={form.control}
          name="atOnce.wheelsOff"
          render={({ field }) => (
            <Tick
              label="Wheels off"
              hint="Until their torque is on record again."
              name={field.name}
              checked={field.value}
              onChange={field.onChange}
            />
          )}
        />
      </fieldset>
      <TextField
        label="Oil hotter than"
        hint="The maker’s limit or your own; a session with hotter oil makes it due."
        optional
        suffix="°C"
        figures
        inputMode="decimal"
        autoComplete="off"
        error={errors['item.triggers.oilHotterThanC']}
        {...form.register('atOnce.oilHotterThan')}
      />
      <Controller
        control={form.control}
        name="atOnce.once"
        render={({ field }) => (
          <Tick
            label="Done once, then it is over"
            hint="A follow-up, such as run-in oil or a look for leaks after 50 km."
            name={field.name}
            checked={field.value}
            onChange={field.onChange}
          />
        )}
      />
    </Fold>
  );
}

function useNow(form: AtOnceProps['form']): string {
  const { once, incidents, oilHotterThan, wheelsOff } = useWatch({
    control: form.control,
    name: 'atOnce',
  });
  const parts = [
    ...INCIDENT_SORTS.filter((sort) => incidents[sort]).map((sort) =>
      INCIDENT_NAME[sort].toLowerCase(),
    ),
    wheelsOff ? 'wheels off' : '',
    oilHotterThan.trim() === '' ? '' : `oil over ${oilHotterThan.trim()} °C`,
    once ? 'done once' : '',
  ].filter((part) => part !== '');
  return parts.length === 0 ? 'no' : parts.join(', ');
}
