'use client';

import { useWatch } from 'react-hook-form';
import { DateField, TextField } from '../../../components/index.ts';
import { Fold } from '../../../forms/Fold.tsx';
import { FormPair } from '../../../forms/Form.tsx';
import { ChoiceField } from '../../ChoiceField.tsx';
import { errorWithin, NUMBER, type PartProps } from '../../parts.ts';
import { ReadyText } from '../../ReadyText.tsx';

const PURPOSES = ['Scrutineering', 'Roadworthiness test', 'Noise test', 'Own check'];
const RESULTS = [
  { value: 'passed', words: 'Passed' },
  { value: 'conditional', words: 'With conditions', hint: 'Something is to be done' },
  { value: 'failed', words: 'Failed' },
] as const;

export function InspectionParts({ form, errors }: PartProps) {
  const rows = { form, errors };
  return (
    <>
      <ReadyText
        {...rows}
        name="inspection.purpose"
        path="purpose"
        label="It was for"
        ready={PURPOSES}
        otherwise="Purpose"
      />
      <ChoiceField
        {...rows}
        name="inspection.result"
        path="result"
        label="The result was"
        options={RESULTS}
      />
      <DateField
        label="Good through"
        hint="The last day of the label or the paper."
        optional
        error={errors['entry.validTo']}
        {...form.register('inspection.validTo')}
      />
      <Details {...rows} />
    </>
  );
}

function Details({ form, errors }: PartProps) {
  const [byWhom, sticker] = useWatch({
    control: form.control,
    name: ['inspection.byWhom', 'inspection.sticker'],
  });
  return (
    <Fold
      title="By whom, label, noise"
      now={[byWhom && `by ${byWhom}`, sticker].filter(Boolean).join(', ')}
      wrong={errorWithin(errors, 'byWhom', 'sticker', 'noiseDb') !== undefined}
    >
      <TextField
        label="By whom"
        optional
        autoComplete="off"
        error={errors['entry.byWhom']}
        {...form.register('inspection.byWhom')}
      />
      <FormPair>
        <TextField
          label="Label or paper"
          hint="Its number or colour."
          optional
          autoComplete="off"
          error={errors['entry.sticker']}
          {...form.register('inspection.sticker')}
        />
        <TextField
          label="Noise"
          hint="As it was measured."
          optional
          suffix="dB"
          {...NUMBER}
          error={errors['entry.noiseDb']}
          {...form.register('inspection.noiseDb')}
        />
      </FormPair>
    </Fold>
  );
}
