'use client';

import type { ItemInput } from '@quartermark/engine/log';
import type { UseFormReturn } from 'react-hook-form';
import { SelectField, TextField } from '../components/index.ts';
import { FormPair, FormSection } from '../forms/Form.tsx';
import { HardUse } from './HardUse.tsx';
import type { ItemFields } from './item-fields.ts';
import { LastDone } from './LastDone.tsx';
import { LimitRows } from './LimitRows.tsx';

const ROLE_OPTIONS: readonly { value: ItemInput['role']; words: string }[] = [
  { value: 'other', words: 'Anything else' },
  { value: 'engineOil', words: 'The engine oil' },
  { value: 'oilFilter', words: 'The oil filter' },
];

type ItemPartsProps = {
  form: UseFormReturn<ItemFields>;
  errors: Record<string, string>;
  /** unit of the car's odometer */
  unit: 'km' | 'mi';
  onMoved: () => void;
};

/** The fields of an item, the same for a new one and for a change. */
export function ItemParts({ form, errors, unit, onMoved }: ItemPartsProps) {
  const rows = { form, errors, unit, onMoved };
  return (
    <>
      <FormSection title="The item">
        <FormPair>
          <TextField
            label="Name"
            hint="What the manual calls it, such as brake fluid."
            autoComplete="off"
            error={errors['item.name']}
            {...form.register('name')}
          />
          <SelectField
            label="What it is"
            hint="An oil change renews the oil, and the filter if it says so."
            options={ROLE_OPTIONS}
            error={errors['item.role']}
            {...form.register('role')}
          />
        </FormPair>
      </FormSection>
      <FormSection title="Limits">
        <p>From the manual. With several, whichever is reached first decides.</p>
        <LimitRows {...rows} name="limits" path="item.limits" />
        <HardUse {...rows} />
        <TextField
          label="Whose values these are"
          hint="Such as the page of the manual. Left empty, they are your own."
          optional
          autoComplete="off"
          error={errors['item.source']}
          {...form.register('source')}
        />
      </FormSection>
      <LastDone form={form} errors={errors} />
      <FormSection title="In good time">
        <FormPair>
          <TextField
            label="Tell me before"
            hint="How long before the limit you want to know."
            suffix="days"
            figures
            inputMode="numeric"
            autoComplete="off"
            error={errors['item.warnDays']}
            {...form.register('warnDays')}
          />
          <TextField
            label="Days to get the parts"
            hint="0 if they are on the shelf."
            suffix="days"
            figures
            inputMode="numeric"
            autoComplete="off"
            error={errors['item.leadDays']}
            {...form.register('leadDays')}
          />
        </FormPair>
      </FormSection>
    </>
  );
}
