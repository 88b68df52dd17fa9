'use client';

import type { ItemView } from '@quartermark/api/client';
import type { Route } from 'next';
import Link from 'next/link';
import { Controller, useWatch } from 'react-hook-form';
import { ButtonLink, NoteField, Notice, TextField } from '../../../components/index.ts';
import { Fold } from '../../../forms/Fold.tsx';
import { FormPair } from '../../../forms/Form.tsx';
import { type AboutProps, errorAt, errorWithin, NUMBER, type PartProps } from '../../parts.ts';
import { TickField } from '../../TickField.tsx';
import { Ticks } from '../../Ticks.tsx';

export function ServiceParts({ form, errors, about }: AboutProps) {
  const { garage, carId, items } = about;
  const rows = { form, errors };
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
            error={errorWithin(errors, 'items')}
          />
        )}
      />
      {carId === null ? null : (
        <>
          <div>
            <ButtonLink href={`/g/${garage.id}/car/${carId}/item/add` as Route} look="quiet">
              Watch another item
            </ButtonLink>
          </div>
          <OilToo {...rows} items={items} href={`/g/${garage.id}/record/${carId}/oilChange`} />
        </>
      )}
      <Details {...rows} />
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
  return (
    <Ticks
      legend="Done"
      none="No item is watched yet. Add one first, then say here that it was done."
      rows={[
        ...items.map(({ id, item }) => ({ id, words: item.name })),
        ...gone.map((id) => ({ id, words: 'An item no longer watched' })),
      ]}
      done={done}
      onChange={onChange}
      error={error}
    />
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
  const wrong = errorWithin(errors, 'parts', 'byWhom', 'cost', 'hourMeter') !== undefined;
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
        error={errorWithin(errors, 'parts')}
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
      <TickField
        form={form}
        name="service.historyComplete"
        label="All use since then is in the log"
        hint="Only of interest for a day before the log began: without it, what is counted is a least amount."
      />
    </Fold>
  );
}
