'use client';

import { COMPONENT_SORTS, EQUIPMENT_SORTS } from '@quartermark/engine/log';
import { Controller, type UseFormReturn, useWatch } from 'react-hook-form';
import {
  Choice,
  DateField,
  NoteField,
  QuantityField,
  SelectField,
  TextField,
} from '../components/index.ts';
import { FormPair, FormSection } from '../forms/Form.tsx';
import { type GearFields, hasDateCode, hasDepth } from './gear-fields.ts';
import { COMPONENT_NAME, EQUIPMENT_NAME } from './gear-words.ts';

const COMPONENT_OPTIONS = COMPONENT_SORTS.map((value) => ({ value, words: COMPONENT_NAME[value] }));
const EQUIPMENT_OPTIONS = EQUIPMENT_SORTS.map((value) => ({ value, words: EQUIPMENT_NAME[value] }));
const CONDITION_OPTIONS = [
  { value: 'new', words: 'New', hint: 'counted from the start' },
  { value: 'used', words: 'Used', hint: 'what it did before is not known' },
] as const;
const DEPTH_UNITS = [
  { value: 'mm', words: 'mm' },
  { value: 'in32', words: '1/32 in' },
] as const;

type GearPartsProps = { form: UseFormReturn<GearFields>; errors: Record<string, string> };

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
      {kind === 'component' ? <Component form={form} errors={errors} /> : null}
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

function Component({ form, errors }: GearPartsProps) {
  const sort = useWatch({ control: form.control, name: 'componentSort' });
  return (
    <>
      <SelectField
        label="Sort"
        options={COMPONENT_OPTIONS}
        error={errors['gear.sort']}
        {...form.register('componentSort')}
      />
      <Controller
        control={form.control}
        name="condition"
        render={({ field }) => (
          <Choice
            label="As it came"
            options={CONDITION_OPTIONS}
            value={field.value}
            onChange={field.onChange}
            error={errors['gear.condition']}
          />
        )}
      />
      <FormPair>
        <DateField
          label="Here since"
          optional
          error={errors['gear.since']}
          {...form.register('since')}
        />
        {hasDateCode(sort) ? (
          <TextField
            label="Date code"
            hint="The last four digits on the tyre’s wall: week and year, such as 0122."
            optional
            figures
            autoComplete="off"
            error={errors['gear.dateCode']}
            {...form.register('dateCode')}
          />
        ) : null}
      </FormPair>
      {hasDepth(sort) ? (
        <Controller
          control={form.control}
          name="leastDepth"
          render={({ field }) => (
            <QuantityField
              label={sort === 'tyreSet' ? 'Your own least tread' : 'Your own least thickness'}
              hint="Where you want to stop. What the law and the maker ask stands besides."
              optional
              units={DEPTH_UNITS}
              name={field.name}
              value={field.value}
              onChange={field.onChange}
              onBlur={field.onBlur}
              error={errors['gear.leastDepth.text'] ?? errors['gear.leastDepth']}
            />
          )}
        />
      ) : null}
    </>
  );
}
