'use client';

import { AMOUNT_MEASURES, USE_CLASSES } from '@quartermark/engine/log';
import { Controller, type UseFormReturn, useWatch } from 'react-hook-form';
import { Choice, SelectField, TextField, Tick } from '../components/index.ts';
import { Fold } from '../forms/Fold.tsx';
import { FormPair } from '../forms/Form.tsx';
import styles from './HardUse.module.css';
import type { ItemFields } from './item-fields.ts';
import { LimitRows } from './LimitRows.tsx';
import { MEASURE_NAME, USE_NAME } from './use-words.ts';

const BASIS_OPTIONS = [
  { value: 'limit', words: 'of the usual limit', hint: 'cannot switch back' },
  { value: 'used', words: 'of all use since then', hint: 'judged as it is used' },
] as const;
const MEASURE_OPTIONS = AMOUNT_MEASURES.map((value) => ({ value, words: MEASURE_NAME[value] }));

type HardUseProps = {
  form: UseFormReturn<ItemFields>;
  errors: Record<string, string>;
  unit: 'km' | 'mi';
  onMoved: () => void;
};

/** The shorter limits that hard use switches on. */
export function HardUse({ form, errors, unit, onMoved }: HardUseProps) {
  const on = useWatch({ control: form.control, name: 'hardUse.on' });
  return (
    <Fold
      title="A shorter schedule for hard use"
      now={on ? 'yes' : 'none'}
      wrong={Object.keys(errors).some((field) => field.startsWith('item.severe'))}
    >
      <p>
        Many manuals give a second, shorter schedule for hard use. Once the share of hard use since
        the last service is reached, its limits count as well, until the next service.
      </p>
      <Controller
        control={form.control}
        name="hardUse.on"
        render={({ field }) => (
          <Tick
            label="This item has one"
            name={field.name}
            checked={field.value}
            onChange={field.onChange}
          />
        )}
      />
      {on ? <Schedule form={form} errors={errors} unit={unit} onMoved={onMoved} /> : null}
    </Fold>
  );
}

function Schedule({ form, errors, unit, onMoved }: HardUseProps) {
  return (
    <>
      <Classes form={form} error={errors['item.severe.classes']} />
      <FormPair>
        <TextField
          label="From a share of"
          suffix="%"
          figures
          inputMode="decimal"
          autoComplete="off"
          error={errors['item.severe.share']}
          {...form.register('hardUse.percent')}
        />
        <SelectField
          label="Measured in"
          options={MEASURE_OPTIONS}
          error={errors['item.severe.measure']}
          {...form.register('hardUse.measure')}
        />
      </FormPair>
      <Controller
        control={form.control}
        name="hardUse.basis"
        render={({ field }) => (
          <Choice
            label="A share"
            size="small"
            options={BASIS_OPTIONS}
            value={field.value}
            onChange={field.onChange}
            error={errors['item.severe.basis']}
          />
        )}
      />
      <NoUsualLimit form={form} />
      <h3>The shorter limits</h3>
      <LimitRows
        form={form}
        name="hardUse.limits"
        path="item.severe.limits"
        errors={errors}
        unit={unit}
        onMoved={onMoved}
      />
    </>
  );
}

function Classes({ form, error }: { form: UseFormReturn<ItemFields>; error: string | undefined }) {
  return (
    <fieldset className={styles.classes}>
      <legend>What is hard use</legend>
      {USE_CLASSES.map((use) => (
        <Controller
          key={use}
          control={form.control}
          name={`hardUse.classes.${use}`}
          render={({ field }) => (
            <Tick
              label={USE_NAME[use]}
              name={field.name}
              checked={field.value}
              onChange={field.onChange}
            />
          )}
        />
      ))}
      {error ? (
        <p role="alert" className={styles.error}>
          {error}
        </p>
      ) : null}
    </fieldset>
  );
}

/** Nobody can say how much hard use is too much of a limit that does not exist. */
function NoUsualLimit({ form }: { form: UseFormReturn<ItemFields> }) {
  const [limits, measure, basis] = useWatch({
    control: form.control,
    name: ['limits', 'hardUse.measure', 'hardUse.basis'],
  });
  if (basis !== 'limit' || limits.some((limit) => limit.measure === measure)) return null;
  return (
    <p>
      There is no usual limit counted in {MEASURE_NAME[measure].toLowerCase()} above, so the shorter
      limits would count from the start.
    </p>
  );
}
