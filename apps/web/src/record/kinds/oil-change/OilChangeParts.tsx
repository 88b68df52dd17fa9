'use client';

import type { EntryInput } from '@quartermark/engine/log';
import { Controller } from 'react-hook-form';
import { Fold } from '../../../forms/Fold.tsx';
import { FormPair } from '../../../forms/Form.tsx';
import { ChoiceField } from '../../ChoiceField.tsx';
import { finerWords } from '../../finer-words.ts';
import { Product } from '../../Product.tsx';
import { type PartProps, VOLUME_UNITS } from '../../parts.ts';
import { Quantity } from '../../Quantity.tsx';
import { ZoneChoice } from '../../Zones.tsx';

const FILTER = [
  { value: 'renewed', words: 'Renewed' },
  { value: 'kept', words: 'Kept' },
] as const;

type AmendedProps = PartProps & { base: EntryInput | null };

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
      <ChoiceField
        {...{ form, errors }}
        name="oilChange.filter"
        path="filterRenewed"
        label="The oil filter was"
        options={FILTER}
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
