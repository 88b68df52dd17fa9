'use client';

import { TextField } from '../../../components/index.ts';
import { Fold } from '../../../forms/Fold.tsx';
import { errorAt, NUMBER, type PartProps } from '../../parts.ts';

export function OdometerParts({ form, errors }: PartProps) {
  return (
    <Fold title="The hour meter too" wrong={Boolean(errorAt(errors, 'hourMeter'))}>
      <TextField
        label="Hour meter"
        optional
        suffix="h"
        {...NUMBER}
        error={errorAt(errors, 'hourMeter')}
        {...form.register('reading.hourMeter')}
      />
    </Fold>
  );
}
