'use client';

import { Controller, type UseFormReturn, useWatch } from 'react-hook-form';
import { Choice, DateField, QuantityField, TextField, Tick } from '../components/index.ts';
import { FormPair, FormSection } from '../forms/Form.tsx';
import type { ItemFields } from './item-fields.ts';

const LAST_OPTIONS = [
  { value: 'onRecord', words: 'Done on a day I know' },
  { value: 'notOnRecord', words: 'Not on record' },
] as const;
const UNITS = [
  { value: 'km', words: 'km' },
  { value: 'mi', words: 'miles' },
] as const;

type PartProps = { form: UseFormReturn<ItemFields>; errors: Record<string, string> };
type LastDoneProps = PartProps & {
  /** of the garage, `YYYY-MM-DD` */
  today: string;
};

/** When the item was last known to be good: what everything is counted from. */
export function LastDone({ form, errors, today }: LastDoneProps) {
  const last = useWatch({ control: form.control, name: 'last' });
  return (
    <FormSection title="Last done">
      <Controller
        control={form.control}
        name="last"
        render={({ field }) => (
          <Choice
            label="When it was last done"
            hint="Counting begins there. A service recorded later counts instead of it."
            size="small"
            options={LAST_OPTIONS}
            value={field.value}
            onChange={field.onChange}
            error={errors['item.baseline']}
          />
        )}
      />
      {last === 'onRecord' ? (
        <When form={form} errors={errors} />
      ) : (
        <p>
          Until a service is recorded, or you say here when it was last done, this item is shown as
          not on record and never as good.
        </p>
      )}
      <DueNow form={form} errors={errors} today={today} />
    </FormSection>
  );
}

function DueNow({ form, errors, today }: LastDoneProps) {
  const now = useWatch({ control: form.control, name: 'atOnce.due.now' });
  return (
    <>
      <Controller
        control={form.control}
        name="atOnce.due.now"
        render={({ field }) => (
          <Tick
            label="Treat as due now"
            hint="It stays due until it is done on that day or later, whatever the limits say."
            name={field.name}
            checked={field.value}
            onChange={(on) => {
              field.onChange(on);
              if (on && form.getValues('atOnce.due.since') === '')
                form.setValue('atOnce.due.since', today, { shouldDirty: true });
            }}
          />
        )}
      />
      {now ? (
        <DateField
          label="Due since"
          error={errors['item.dueSince']}
          {...form.register('atOnce.due.since')}
        />
      ) : null}
    </>
  );
}

function When({ form, errors }: PartProps) {
  return (
    <>
      <FormPair>
        <DateField
          label="Done on"
          error={errors['item.baseline.on']}
          {...form.register('lastDone.on')}
        />
        <TextField
          label="Time of day"
          optional
          type="time"
          figures
          error={errors['item.baseline.time']}
          {...form.register('lastDone.time')}
        />
      </FormPair>
      <Controller
        control={form.control}
        name="lastDone.odometer"
        render={({ field }) => (
          <QuantityField
            label="The odometer then"
            hint="As it was read. Without it, the way since then may not be known whole."
            optional
            units={UNITS}
            name={field.name}
            value={field.value}
            onChange={field.onChange}
            onBlur={field.onBlur}
            error={errors['item.baseline.odometer.text'] ?? errors['item.baseline.odometer']}
          />
        )}
      />
      <Controller
        control={form.control}
        name="lastDone.historyComplete"
        render={({ field }) => (
          <Tick
            label="All use since then is in the log"
            hint="Tick it only if no drive and no session is missing: otherwise what is counted is a least amount, and is called that."
            name={field.name}
            checked={field.value}
            onChange={field.onChange}
          />
        )}
      />
    </>
  );
}
