'use client';

import type { ItemView } from '@quartermark/api/client';
import type { Route } from 'next';
import Link from 'next/link';
import { Controller, useWatch } from 'react-hook-form';
import { ButtonLink, NoteField, Notice, TextField, Tick } from '../components/index.ts';
import { Fold } from '../forms/Fold.tsx';
import { FormPair } from '../forms/Form.tsx';
import { errorAt, NUMBER, type PartProps } from './parts.ts';
import styles from './ServiceParts.module.css';

type ServicePartsProps = PartProps & {
  items: readonly ItemView[];
  /** address of the car's garage, and of the car's forms */
  garageHref: string;
  carId: string;
};

export function ServiceParts({ form, errors, items, garageHref, carId }: ServicePartsProps) {
  return (
    <>
      <Controller
        control={form.control}
        name="service.items"
        render={({ field: { value, onChange } }) => (
          <Done
            items={items}
            done={value}
            onChange={onChange}
            error={Object.entries(errors).find(([path]) => path.startsWith('entry.items'))?.[1]}
          />
        )}
      />
      <div>
        <ButtonLink href={`${garageHref}/car/${carId}/item/add` as Route} look="quiet">
          Watch another item
        </ButtonLink>
      </div>
      <OilToo
        form={form}
        errors={errors}
        items={items}
        href={`${garageHref}/record/${carId}/oilChange`}
      />
      <Details form={form} errors={errors} />
    </>
  );
}

type DoneProps = {
  items: readonly ItemView[];
  done: readonly string[];
  onChange: (done: string[]) => void;
  error: string | undefined;
};

function Done({ items, done, onChange, error }: DoneProps) {
  // an item removed since stays where it was done
  const gone = done.filter((id) => !items.some((item) => item.id === id));
  const rows = [
    ...items.map(({ id, item }) => ({ id, name: item.name })),
    ...gone.map((id) => ({ id, name: 'An item no longer watched' })),
  ];
  const tick = (id: string, on: boolean) =>
    onChange(on ? [...done, id] : done.filter((one) => one !== id));
  return (
    <fieldset className={styles.done}>
      <legend>Done</legend>
      {rows.length === 0 ? (
        <p>No item of this car is watched yet. Add one first, then say here that it was done.</p>
      ) : null}
      {rows.map(({ id, name }) => (
        <Tick key={id} label={name} checked={done.includes(id)} onChange={(on) => tick(id, on)} />
      ))}
      {error ? (
        <p role="alert" className={styles.error}>
          {error}
        </p>
      ) : null}
    </fieldset>
  );
}

type OilTooProps = PartProps & { items: readonly ItemView[]; href: string };

/** New oil is more than a service: what went in and out is known to the oil change alone. */
function OilToo({ form, items, href }: OilTooProps) {
  const done = useWatch({ control: form.control, name: 'service.items' });
  const oil = items.some(({ id, item }) => item.role === 'engineOil' && done.includes(id));
  if (!oil) return null;
  return (
    <Notice>
      <p>
        If you also know how much oil went in,{' '}
        <Link href={href as Route}>record an oil change</Link> for it instead; it renews the engine
        oil by itself.
      </p>
    </Notice>
  );
}

function Details({ form, errors }: PartProps) {
  const [byWhom, cost] = useWatch({
    control: form.control,
    name: ['service.byWhom', 'service.cost'],
  });
  const wrong = ['parts', 'byWhom', 'cost', 'hourMeter'].some((name) =>
    Object.keys(errors).some((path) => path.startsWith(`entry.${name}`)),
  );
  return (
    <Fold
      title="Parts, cost, by whom"
      now={[byWhom && `by ${byWhom}`, cost].filter(Boolean).join(', ')}
      wrong={wrong}
    >
      <NoteField
        label="Parts"
        hint="One on each line."
        optional
        rows={3}
        error={Object.entries(errors).find(([path]) => path.startsWith('entry.parts'))?.[1]}
        {...form.register('service.parts')}
      />
      <FormPair>
        <TextField
          label="By whom"
          optional
          autoComplete="off"
          error={errors['entry.byWhom']}
          {...form.register('service.byWhom')}
        />
        <TextField
          label="Cost"
          hint="With the currency."
          optional
          autoComplete="off"
          error={errors['entry.cost']}
          {...form.register('service.cost')}
        />
      </FormPair>
      <TextField
        label="Hour meter"
        optional
        suffix="h"
        {...NUMBER}
        error={errorAt(errors, 'hourMeter')}
        {...form.register('service.hourMeter')}
      />
      <Controller
        control={form.control}
        name="service.historyComplete"
        render={({ field: { value, onChange } }) => (
          <Tick
            label="All use since then is in the log"
            hint="Only of interest for a day before the log began: without it, what is counted is a least amount."
            checked={value}
            onChange={onChange}
          />
        )}
      />
    </Fold>
  );
}
