'use client';

import { TextField } from '../../../components/index.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import type { PartProps } from '../../parts.ts';

const SORTS = [
  { value: 'off', words: 'Off the track', hint: 'Grass, gravel or kerb' },
  { value: 'contact', words: 'Contact', hint: 'Another car, a wall, a cone' },
  { value: 'overRev', words: 'Engine over-revved', hint: 'A wrong gear, a missed shift' },
  { value: 'softPedal', words: 'Soft brake pedal', hint: 'Long, spongy, or gone' },
  { value: 'overheating', words: 'Overheating', hint: 'Coolant or oil too hot' },
  { value: 'warningLamp', words: 'Warning lamp', hint: 'Any that stayed on' },
  { value: 'lowOilPressure', words: 'Low oil pressure', hint: 'Lamp, gauge or alarm' },
] as const;

export function IncidentParts({ form, errors }: PartProps) {
  return (
    <>
      <ChoiceField
        form={form}
        errors={errors}
        name="incident.what"
        path="what"
        label="What happened"
        layout="pairs"
        hint="Once saved, the car says what to look over before it is used again."
        options={SORTS}
      />
      <TextField
        label="In a few words"
        hint="Where, how fast, which gear, which lamp."
        optional
        autoComplete="off"
        error={errors['entry.detail']}
        {...form.register('incident.detail')}
      />
    </>
  );
}
