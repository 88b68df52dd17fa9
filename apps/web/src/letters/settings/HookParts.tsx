'use client';

import { Controller, useWatch } from 'react-hook-form';
import { TextField, Tick } from '../../components/index.ts';
import { FormSection } from '../../forms/Form.tsx';
import type { PostPartProps } from './post-part-props.ts';

/** Where a program of one's own is told that letters were written. */
export function HookParts({ form, errors, opened }: PostPartProps & { opened: string | null }) {
  const url = useWatch({ control: form.control, name: 'hookUrl' });
  return (
    <FormSection title="Webhook">
      <TextField
        label="Address of the webhook"
        hint="A program of yours that is told once a night, signed, that letters were written. Empty: none. Its secret is shown once after saving."
        optional
        type="url"
        autoComplete="off"
        spellCheck={false}
        placeholder="https://"
        error={errors['hook.url'] ?? errors.hook}
        {...form.register('hookUrl')}
      />
      {opened !== null && url.trim() === opened ? (
        <Controller
          control={form.control}
          name="newSecret"
          render={({ field }) => (
            <Tick
              label="Make a new secret"
              hint="The old one no longer signs once this is saved."
              name="newSecret"
              checked={field.value}
              onChange={field.onChange}
            />
          )}
        />
      ) : null}
    </FormSection>
  );
}
