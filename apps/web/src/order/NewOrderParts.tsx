'use client';

import { weekdayAhead } from '@quartermark/engine/display';
import { Controller, type UseFormReturn, useWatch } from 'react-hook-form';
import { DateField, Stepper } from '../components/index.ts';
import { FormPair } from '../forms/Form.tsx';
import { expectedDay, type NewOrderFields } from './order-fields.ts';
import { WhatAndFrom } from './WhatAndFrom.tsx';

type NewOrderPartsProps = {
  form: UseFormReturn<NewOrderFields>;
  errors: Record<string, string>;
  /** of the garage */
  today: string;
};

/** The fields of a new order. */
export function NewOrderParts({ form, errors, today }: NewOrderPartsProps) {
  return (
    <>
      <FormPair>
        <Controller
          control={form.control}
          name="expectedIn"
          render={({ field }) => (
            <Stepper
              label="Expected in"
              hint={<Expected form={form} today={today} />}
              optional
              unit="days"
              max={730}
              name={field.name}
              value={field.value}
              onChange={field.onChange}
              error={errors['order.expected']}
            />
          )}
        />
        <DateField label="Ordered on" error={errors['order.on']} {...form.register('on')} />
      </FormPair>
      <WhatAndFrom what={form.register('what')} from={form.register('from')} errors={errors} />
    </>
  );
}

/** The day the stepper stands on. */
function Expected({ form, today }: Omit<NewOrderPartsProps, 'errors'>) {
  const fields = useWatch({ control: form.control }) as NewOrderFields;
  const day = expectedDay(fields);
  return day === '' ? 'No day is expected.' : `That is ${weekdayAhead(day, { asOf: today })}.`;
}
