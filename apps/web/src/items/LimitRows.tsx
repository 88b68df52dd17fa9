'use client';

import {
  AMOUNT_MEASURES,
  CALENDAR_MEASURES,
  type Measure,
  USE_CLASSES,
} from '@quartermark/engine/log';
import { type UseFormReturn, useFieldArray, useWatch } from 'react-hook-form';
import { Button, DateField, QuantityField, SelectField, TextField } from '../components/index.ts';
import { Fold } from '../forms/Fold.tsx';
import { FormPair } from '../forms/Form.tsx';
import type { ItemFields } from './item-fields.ts';
import styles from './LimitRows.module.css';
import { emptyLimit, isAmountMeasure, type LimitFields } from './limit-fields.ts';
import { MEASURE_NAME, MEASURE_ONE, USE_NAME } from './use-words.ts';

const MEASURES: readonly Measure[] = [...AMOUNT_MEASURES, ...CALENDAR_MEASURES];
const UNITS = [
  { value: 'km', words: 'km' },
  { value: 'mi', words: 'miles' },
] as const;

type LimitRowsProps = {
  form: UseFormReturn<ItemFields>;
  name: 'limits' | 'hardUse.limits';
  /** where the server says errors of these limits: `item.limits` */
  path: string;
  errors: Record<string, string>;
  unit: 'km' | 'mi';
  /** rows moved up: what was wrong no longer stands where it was said */
  onMoved: () => void;
};

/** The limits of an item, one after the other; whichever is reached first decides. */
export function LimitRows({ form, name, path, errors, unit, onMoved }: LimitRowsProps) {
  const { control } = form;
  const { fields, append, remove } = useFieldArray({ control, name });
  const rows: LimitFields[] = useWatch({ control, name });
  const used = rows.map(({ measure }) => measure);
  const next = (['months', ...MEASURES] as const).find((measure) => !used.includes(measure));
  return (
    <>
      {fields.map((field, at) => (
        <fieldset key={field.id} className={styles.limit}>
          <legend>
            {at === 0 ? 'Limit' : 'Or'}
            {rows.length > 1 ? (
              <Button
                look="quiet"
                aria-label={`Take away: ${MEASURE_NAME[rows[at]?.measure ?? 'km']}`}
                onClick={() => {
                  remove(at);
                  onMoved();
                }}
              >
                Take away
              </Button>
            ) : null}
          </legend>
          <LimitRow
            form={form}
            name={`${name}.${at}`}
            path={`${path}.${at}`}
            errors={errors}
            taken={used.filter((_, other) => other !== at)}
          />
        </fieldset>
      ))}
      {errors[path] ? (
        <p role="alert" className={styles.error}>
          {errors[path]}
        </p>
      ) : null}
      {next ? (
        <div>
          <Button onClick={() => append(emptyLimit(next, unit))}>Add another limit</Button>
        </div>
      ) : null}
    </>
  );
}

type LimitRowProps = {
  form: UseFormReturn<ItemFields>;
  name: `limits.${number}` | `hardUse.limits.${number}`;
  path: string;
  errors: Record<string, string>;
  taken: readonly Measure[];
};

function LimitRow({ form, name, path, errors, taken }: LimitRowProps) {
  const row: LimitFields | undefined = useWatch({ control: form.control, name });
  if (!row) return null;
  const open = MEASURES.filter((measure) => !taken.includes(measure));
  return (
    <>
      <FormPair>
        <SelectField
          label="Counted in"
          options={open.map((value) => ({ value, words: MEASURE_NAME[value] }))}
          error={errors[`${path}.measure`]}
          {...form.register(`${name}.measure`)}
        />
        <LimitValue form={form} name={name} row={row} error={errors[`${path}.value`]} />
      </FormPair>
      {isAmountMeasure(row.measure) ? (
        <Weights form={form} name={name} row={row} path={`${path}.weights`} errors={errors} />
      ) : null}
    </>
  );
}

type LimitValueProps = Pick<LimitRowProps, 'form' | 'name'> & {
  row: LimitFields;
  error: string | undefined;
};

function LimitValue({ form, name, row, error }: LimitValueProps) {
  if (row.measure === 'date')
    return <DateField label="Good through" error={error} {...form.register(`${name}.date`)} />;
  if (row.measure === 'km')
    return (
      <QuantityField
        label="At most"
        error={error}
        units={UNITS}
        name={`${name}.amount`}
        value={{ text: row.amount, unit: row.unit }}
        onChange={({ text, unit }) => {
          form.setValue(`${name}.amount`, text, { shouldDirty: true });
          form.setValue(`${name}.unit`, unit, { shouldDirty: true });
        }}
      />
    );
  return (
    <TextField
      label="At most"
      suffix={row.measure === 'hours' ? 'h' : row.measure}
      figures
      inputMode="decimal"
      autoComplete="off"
      error={error}
      {...form.register(`${name}.amount`)}
    />
  );
}

type WeightsProps = Pick<LimitRowProps, 'form' | 'name' | 'path' | 'errors'> & {
  row: LimitFields;
};

function Weights({ form, name, row, path, errors }: WeightsProps) {
  const one =
    row.measure === 'hours' || row.measure === 'sessions' || row.measure === 'launches'
      ? MEASURE_ONE[row.measure]
      : row.unit;
  const typed = USE_CLASSES.filter((use) => row.weights[use].trim() !== '');
  const now = typed.map((use) => `${USE_NAME[use].toLowerCase()} ${row.weights[use].trim()}`);
  return (
    <Fold
      title="How heavily each kind of use counts"
      now={now.length === 0 ? `every ${one} once` : now.join(', ')}
      wrong={Object.keys(errors).some((field) => field.startsWith(`${path}.`))}
    >
      <p>
        Left empty, every {one} counts once. Write 4 if one {one} there wears like four on the road,
        0 if it does not count.
      </p>
      <FormPair>
        {USE_CLASSES.map((use) => (
          <TextField
            key={use}
            label={USE_NAME[use]}
            hint={`One ${one} counts as`}
            figures
            inputMode="decimal"
            autoComplete="off"
            placeholder="1"
            error={errors[`${path}.${use}`]}
            {...form.register(`${name}.weights.${use}`)}
          />
        ))}
      </FormPair>
    </Fold>
  );
}
