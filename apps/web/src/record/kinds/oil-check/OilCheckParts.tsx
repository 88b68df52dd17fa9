'use client';

import type { EntryInput } from '@quartermark/engine/log';
import { Controller, useWatch } from 'react-hook-form';
import { SelectField, TextField } from '../../../components/index.ts';
import { DIPSTICK_OPTIONS } from '../../../forms/car-options.ts';
import { Fold } from '../../../forms/Fold.tsx';
import { finerWords } from '../../finer-words.ts';
import { NUMBER, type PartProps } from '../../parts.ts';
import { ZoneChoice } from '../../Zones.tsx';

type AmendedProps = PartProps & { base: EntryInput | null };

/** The level of an oil check that is amended; a new one is a single press. */
export function OilCheckLevel({ form, errors, base }: AmendedProps) {
  return (
    <Controller
      control={form.control}
      name="oilCheck.level"
      render={({ field }) => (
        <ZoneChoice
          label="The oil stood at"
          value={field.value}
          onChange={field.onChange}
          error={errors['entry.level']}
          finer={base?.kind === 'oilCheck' ? finerWords(base.level) : null}
        />
      )}
    />
  );
}

/** How the stick was read, where that was noticed. */
export function HowRead({ form, errors }: PartProps) {
  const state = useWatch({ control: form.control, name: 'oilCheck.condition.state' });
  const now = DIPSTICK_OPTIONS.find(({ value }) => value === state)?.words;
  return (
    <Fold
      title="How it was read"
      now={now?.toLowerCase()}
      wrong={Boolean(errors['entry.condition.minutesAfterStop'])}
    >
      <SelectField
        label="The engine was"
        options={DIPSTICK_OPTIONS}
        {...form.register('oilCheck.condition.state')}
      />
      {state === 'hotStopped' ? (
        <TextField
          label="Minutes after stopping"
          optional
          {...NUMBER}
          error={errors['entry.condition.minutesAfterStop']}
          {...form.register('oilCheck.condition.minutes')}
        />
      ) : null}
    </Fold>
  );
}
