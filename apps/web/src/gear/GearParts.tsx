'use client';

import { EQUIPMENT_SORTS } from '@quartermark/engine/log';
import { type UseFormReturn, useWatch } from 'react-hook-form';
import { NoteField, SelectField, TextField } from '../components/index.ts';
import { FormSection } from '../forms/Form.tsx';
import { ComponentParts } from './ComponentParts.tsx';
import type { GearFields } from './gear-fields.ts';
import { EQUIPMENT_NAME } from './gear-words.ts';

const EQUIPMENT_OPTIONS = EQUIPMENT_SORTS.map((value) => ({ value, words: EQUIPMENT_NAME[value] }));
export type GearPartsProps = { form: UseFormReturn<GearFields>; errors: Record<string, string> };

const NAME_HINT: Readonly<Record<GearFields['kind'], string>> = {
  component: 'What you call it, such as circuit set 2.',
  equipment: 'What you call it.',
  person: 'Somebody who drives or helps.',
};

/** The fields of a set or part, a tool or a person, the same for a new one and for a change. */
export function GearParts({ form, errors }: GearPartsProps) {
  const kind = useWatch({ control: form.control, name: 'kind' });
  return (
    <FormSection title="What it is">
      <TextField
        label="Name"
        hint={NAME_HINT[kind]}
        autoComplete="off"
        error={errors['gear.name']}
        {...form.register('name')}
      />
      {kind === 'equipment' ? (
        <SelectField
          label="Sort"
          options={EQUIPMENT_OPTIONS}
          error={errors['gear.sort']}
          {...form.register('equipmentSort')}
        />
      ) : null}
      {kind === 'component' ? <ComponentParts form={form} errors={errors} /> : null}
      <NoteField
        label="Remarks"
        optional
        rows={3}
        error={errors['gear.remarks']}
        {...form.register('remarks')}
      />
    </FormSection>
  );
}
