'use client';

import type { UseFormReturn } from 'react-hook-form';
import { DateField } from '../components/index.ts';
import { FormPair, FormSection } from '../forms/Form.tsx';
import type { PlanFields } from './plan-fields.ts';

type PlanDaysProps = { form: UseFormReturn<PlanFields>; errors: Record<string, string> };

/** The days of a planned lay-up, and what a plan does and does not do. */
export function PlanDays({ form, errors }: PlanDaysProps) {
  return (
    <FormSection title="From when to when">
      <FormPair>
        <DateField label="First day" error={errors['layUp.start']} {...form.register('start')} />
        <DateField
          label="Last day"
          hint="Left empty, it is taken to last 150 days."
          optional
          error={errors['layUp.end']}
          {...form.register('end')}
        />
      </FormPair>
      <p>
        On these days no use is expected, so what runs out with use falls due later; months and days
        run on. It is a plan: when the car is really laid up, record that.
      </p>
    </FormSection>
  );
}
