'use client';

import { stickWords } from '@quartermark/engine/display';
import type { EntryInput, StickLevel } from '@quartermark/engine/log';
import { Controller, useWatch } from 'react-hook-form';
import { Choice, SelectField, TextField, Tick } from '../components/index.ts';
import { DIPSTICK_OPTIONS } from '../forms/car-options.ts';
import { Fold } from '../forms/Fold.tsx';
import { FormPair } from '../forms/Form.tsx';
import { errorAt, NUMBER, type PartProps, VOLUME_UNITS } from './parts.ts';
import { Quantity } from './Quantity.tsx';
import { ZoneChoice } from './Zones.tsx';
import { zoneOf } from './zones.ts';

/** The words of a level that is finer than the marks, so that it may stay as it was read. */
const finerWords = (level: StickLevel | undefined) =>
  level && zoneOf(level) === 'asRead' ? stickWords(level) : null;

type AmendedProps = PartProps & { base: EntryInput | null };

/** The level of an oil check that is amended; a new one is a single press. */
export function OilCheckLevel({ form, errors, base }: AmendedProps) {
  return (
    <Controller
      control={form.control}
      name="oilCheck.level"
      render={({ field }) => (
        <ZoneChoice
          label="The oil stood at"
          value={field.value}
          onChange={field.onChange}
          error={errors['entry.level']}
          finer={base?.kind === 'oilCheck' ? finerWords(base.level) : null}
        />
      )}
    />
  );
}

/** How the stick was read, where that was noticed. */
export function HowRead({ form, errors }: PartProps) {
  const state = useWatch({ control: form.control, name: 'oilCheck.condition.state' });
  const now = DIPSTICK_OPTIONS.find(({ value }) => value === state)?.words;
  return (
    <Fold
      title="How it was read"
      now={now?.toLowerCase()}
      wrong={Boolean(errors['entry.condition.minutesAfterStop'])}
    >
      <SelectField
        label="The engine was"
        options={DIPSTICK_OPTIONS}
        {...form.register('oilCheck.condition.state')}
      />
      {state === 'hotStopped' ? (
        <TextField
          label="Minutes after stopping"
          optional
          {...NUMBER}
          error={errors['entry.condition.minutesAfterStop']}
          {...form.register('oilCheck.condition.minutes')}
        />
      ) : null}
    </Fold>
  );
}

const BOTTLES = [
  { text: '0.25', unit: 'l', words: '0.25 L' },
  { text: '0.5', unit: 'l', words: '0.5 L' },
  { text: '1', unit: 'l', words: '1 L' },
  { text: '1', unit: 'usQt', words: '1 US qt' },
] as const;

export function OilTopUpParts({ form, errors, base }: AmendedProps) {
  const before = base?.kind === 'oilTopUp' ? base : null;
  return (
    <>
      <Controller
        control={form.control}
        name="oilTopUp.volume"
        render={({ field: { value, onChange } }) => (
          <Choice
            label="From a bottle"
            options={BOTTLES.map(({ words }) => ({ value: words, words }))}
            value={
              BOTTLES.find(({ text, unit }) => text === value.text && unit === value.unit)?.words ??
              null
            }
            onChange={(words) => {
              const bottle = BOTTLES.find((one) => one.words === words);
              if (bottle) onChange({ text: bottle.text, unit: bottle.unit });
            }}
          />
        )}
      />
      <Quantity
        form={form}
        errors={errors}
        name="oilTopUp.volume"
        path="volume"
        label="Amount"
        hint="Any other amount, as you measured it."
        units={VOLUME_UNITS}
      />
      <Controller
        control={form.control}
        name="oilTopUp.toMax"
        render={({ field: { value, onChange } }) => (
          <Tick
            label="Filled to MAX, read by the manual’s procedure"
            checked={value}
            onChange={onChange}
          />
        )}
      />
      <Fold title="The stick before and after">
        <Controller
          control={form.control}
          name="oilTopUp.before"
          render={({ field: { value, onChange } }) => (
            <ZoneChoice
              label="Before"
              optional
              value={value}
              onChange={onChange}
              finer={finerWords(before?.levelBefore)}
            />
          )}
        />
        <Controller
          control={form.control}
          name="oilTopUp.after"
          render={({ field: { value, onChange } }) => (
            <ZoneChoice
              label="After"
              optional
              value={value}
              onChange={onChange}
              finer={finerWords(before?.levelAfter)}
            />
          )}
        />
      </Fold>
      <Product form={form} errors={errors} of="oilTopUp" />
    </>
  );
}

export function OilChangeParts({ form, errors, base }: AmendedProps) {
  const before = base?.kind === 'oilChange' ? base : null;
  return (
    <>
      <FormPair>
        <Quantity
          form={form}
          errors={errors}
          name="oilChange.drained"
          path="drained"
          label="Drained"
          optional
          units={VOLUME_UNITS}
        />
        <Quantity
          form={form}
          errors={errors}
          name="oilChange.filled"
          path="filled"
          label="Filled"
          optional
          units={VOLUME_UNITS}
        />
      </FormPair>
      <Controller
        control={form.control}
        name="oilChange.filter"
        render={({ field: { value, onChange } }) => (
          <Choice
            label="The oil filter was"
            options={[
              { value: 'renewed', words: 'Renewed' },
              { value: 'kept', words: 'Kept' },
            ]}
            value={value === '' ? null : value}
            onChange={onChange}
            error={errorAt(errors, 'filterRenewed')}
          />
        )}
      />
      <Fold title="The stick after it">
        <Controller
          control={form.control}
          name="oilChange.after"
          render={({ field: { value, onChange } }) => (
            <ZoneChoice
              label="The oil stands at"
              optional
              value={value}
              onChange={onChange}
              finer={finerWords(before?.levelAfter)}
            />
          )}
        />
      </Fold>
      <Product form={form} errors={errors} of="oilChange" />
    </>
  );
}

function Product({ form, errors, of }: PartProps & { of: 'oilTopUp' | 'oilChange' }) {
  const [product, grade] = useWatch({
    control: form.control,
    name: [`${of}.product`, `${of}.grade`],
  });
  const now = [product, grade].filter((words) => words !== '').join(', ');
  const wrong = ['product', 'grade', 'approval'].some((name) => errors[`entry.${name}`]);
  return (
    <Fold title="Which oil" now={now} wrong={wrong}>
      <TextField
        label="Product"
        optional
        autoComplete="off"
        error={errors['entry.product']}
        {...form.register(`${of}.product`)}
      />
      <FormPair>
        <TextField
          label="Grade"
          hint="Such as 10W-60."
          optional
          autoComplete="off"
          error={errors['entry.grade']}
          {...form.register(`${of}.grade`)}
        />
        <TextField
          label="Approval"
          hint="As the maker names it."
          optional
          autoComplete="off"
          error={errors['entry.approval']}
          {...form.register(`${of}.approval`)}
        />
      </FormPair>
    </Fold>
  );
}
