'use client';

import { COMPONENT_SORTS, ROAD_LAWS } from '@quartermark/engine/log';
import { Controller, useWatch } from 'react-hook-form';
import { Choice, DateField, QuantityField, SelectField, TextField } from '../components/index.ts';
import { FormPair } from '../forms/Form.tsx';
import type { GearPartsProps } from './GearParts.tsx';
import { hasDateCode, hasDepth } from './gear-fields.ts';
import { COMPONENT_NAME, ROAD_LAW_NAME } from './gear-words.ts';

const COMPONENT_OPTIONS = COMPONENT_SORTS.map((value) => ({ value, words: COMPONENT_NAME[value] }));
const CONDITION_OPTIONS = [
  { value: 'new', words: 'New', hint: 'counted from the start' },
  { value: 'used', words: 'Used', hint: 'what it did before is not known' },
] as const;
const DEPTH_UNITS = [
  { value: 'mm', words: 'mm' },
  { value: 'in32', words: '1/32 in' },
] as const;
const LAW_OPTIONS = [
  { value: '', words: 'Not said: both laws are shown' },
  ...ROAD_LAWS.map((value) => ({ value, words: ROAD_LAW_NAME[value] })),
];

/** The fields of a set or part alone: as it came, its age, how thin it may get. */
export function ComponentParts({ form, errors }: GearPartsProps) {
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
      {hasDepth(sort) ? <Depths form={form} errors={errors} sort={sort} /> : null}
      {hasDateCode(sort) ? (
        <SelectField
          label="Law of the road"
          hint="2/32 in are 1.59 mm: a tread that is legal in the US may be illegal in the EU."
          options={LAW_OPTIONS}
          error={errors['gear.roadLaw']}
          {...form.register('roadLaw')}
        />
      ) : null}
    </>
  );
}

const LEAST_HINT = {
  tyreSet: 'Where you want to stop. What the law asks stands besides.',
  pads: 'Where you want to stop, friction material alone. Left empty, 3 mm (common practice).',
  discs: 'What is stamped on the disc comes first. Left empty, there is nothing to judge it by.',
};

type DepthsProps = GearPartsProps & { sort: keyof typeof COMPONENT_NAME };

function Depths({ sort, ...rest }: DepthsProps) {
  const hint = sort === 'pads' || sort === 'discs' ? LEAST_HINT[sort] : LEAST_HINT.tyreSet;
  return (
    <>
      <DepthField
        {...rest}
        name="leastDepth"
        label={sort === 'tyreSet' ? 'Your own least tread' : 'Your own least thickness'}
        hint={hint}
      />
      <DepthField
        {...rest}
        name="newDepth"
        label={sort === 'tyreSet' ? 'Tread when new' : 'Thickness when new'}
        hint="With it the first measurement gives a rough rate already."
      />
      {sort === 'pads' ? (
        <DepthField
          {...rest}
          name="startDepth"
          label="Start a circuit day above"
          hint="Left empty, half of new, or 6 mm (common practice)."
        />
      ) : null}
    </>
  );
}

type DepthFieldProps = GearPartsProps & {
  name: 'leastDepth' | 'newDepth' | 'startDepth';
  label: string;
  hint: string;
};

function DepthField({ form, errors, name, label, hint }: DepthFieldProps) {
  return (
    <Controller
      control={form.control}
      name={name}
      render={({ field }) => (
        <QuantityField
          label={label}
          hint={hint}
          optional
          units={DEPTH_UNITS}
          name={field.name}
          value={field.value}
          onChange={field.onChange}
          onBlur={field.onBlur}
          error={errors[`gear.${name}.text`] ?? errors[`gear.${name}`]}
        />
      )}
    />
  );
}
