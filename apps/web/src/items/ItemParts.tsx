'use client';

import type { ItemInput } from '@quartermark/engine/log';
import type { UseFormReturn } from 'react-hook-form';
import { SelectField, TextField } from '../components/index.ts';
import { FormPair, FormSection } from '../forms/Form.tsx';
import { AtOnce } from './AtOnce.tsx';
import { HardUse } from './HardUse.tsx';
import type { ItemFields } from './item-fields.ts';
import { LastDone } from './LastDone.tsx';
import { LimitRows } from './LimitRows.tsx';
import { Source } from './Source.tsx';
import { ROLE_WORDS } from './use-words.ts';

const ROLES: readonly ItemInput['role'][] = [
  'other',
  'engineOil',
  'oilFilter',
  'brakeFluid',
  'pads',
  'tyres',
  'wheelFasteners',
];
const ROLE_OPTIONS = ROLES.map((value) => ({ value, words: capital(ROLE_WORDS[value]) }));

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

type ItemPartsProps = {
  form: UseFormReturn<ItemFields>;
  errors: Record<string, string>;
  /** what distances are typed in */
  unit: 'km' | 'mi';
  /** of the garage, `YYYY-MM-DD` */
  today: string;
  onMoved: () => void;
};

/** The fields of an item, the same for a new one and for a change. */
export function ItemParts({ form, errors, unit, today, onMoved }: ItemPartsProps) {
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
        <Source form={form} error={errors['item.source']} />
      </FormSection>
      <LastDone form={form} errors={errors} today={today} />
      <AtOnce form={form} errors={errors} />
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
