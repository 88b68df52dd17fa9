'use client';

import type { EntryInput } from '@quartermark/engine/log';
import { Controller } from 'react-hook-form';
import { Choice } from '../../../components/index.ts';
import { Fold } from '../../../forms/Fold.tsx';
import { finerWords } from '../../finer-words.ts';
import { Product } from '../../Product.tsx';
import { type PartProps, VOLUME_UNITS } from '../../parts.ts';
import { Quantity } from '../../Quantity.tsx';
import { TickField } from '../../TickField.tsx';
import { ZoneChoice } from '../../Zones.tsx';

type AmendedProps = PartProps & { base: EntryInput | null };

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
      <TickField
        form={form}
        name="oilTopUp.toMax"
        label="Filled to MAX, read by the manual’s procedure"
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
