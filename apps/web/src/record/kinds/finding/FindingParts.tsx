'use client';

import { useWatch } from 'react-hook-form';
import { DateField, TextField } from '../../../components/index.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { CORNERS } from '../../corners.ts';
import type { PartProps } from '../../parts.ts';

export const WHERE = [...CORNERS, { value: 'elsewhere', words: 'Elsewhere' }] as const;
export const SEVERITIES = [
  { value: 'doNotDrive', words: 'Do not drive', hint: 'The car stays until it is dealt with' },
  { value: 'beforeHardUse', words: 'Before hard use', hint: 'The road is fine, a circuit is not' },
  { value: 'watch', words: 'Watch', hint: 'It may get worse' },
  { value: 'cosmetic', words: 'Cosmetic', hint: 'Nothing depends on it' },
] as const;

export function FindingParts({ form, errors }: PartProps) {
  const rows = { form, errors };
  const corner = useWatch({ control: form.control, name: 'finding.corner' });
  return (
    <>
      <TextField
        label="What you found"
        autoComplete="off"
        error={errors['entry.what']}
        {...form.register('finding.what')}
      />
      <ChoiceField
        {...rows}
        name="finding.corner"
        path={corner === 'elsewhere' ? 'corner' : 'where'}
        label="Where"
        layout="pairs"
        options={WHERE}
      />
      {corner === 'elsewhere' ? (
        <TextField
          label="Where it is"
          hint="Such as under the gearbox."
          optional
          autoComplete="off"
          error={errors['entry.where']}
          {...form.register('finding.place')}
        />
      ) : null}
      <ChoiceField
        {...rows}
        name="finding.severity"
        path="severity"
        label="How bad it is"
        layout="stack"
        options={SEVERITIES}
      />
      <DateField
        label="To be done by"
        optional
        error={errors['entry.dueBy']}
        {...form.register('finding.dueBy')}
      />
    </>
  );
}
