'use client';

import type { MoistAir } from '@quartermark/engine/air';
import type { UseFormReturn } from 'react-hook-form';
import { TextField } from '../components/index.ts';
import { NUMBER } from '../record/parts.ts';
import { AirOfDay } from './AirOfDay.tsx';
import { Answer } from './Answer.tsx';
import { type AirPageFields, type Problems, readAir, readTime } from './air-fields.ts';
import { passToday } from './air-sums.ts';

type OtherDayProps = {
  form: UseFormReturn<AirPageFields>;
  fields: AirPageFields;
  problems: Problems;
  today: MoistAir | null;
};

/** Two drag-strip days held against each other: the time of one in the air of the other. */
export function OtherDay({ form, fields, problems, today }: OtherDayProps) {
  const other = readAir(fields.other, 'other', problems);
  const timeS = readTime(fields.time, problems);
  const whole = today !== null && other !== null && timeS !== null;
  return (
    <>
      <p>For engines without a turbo or a supercharger: it is not meant for boosted ones.</p>
      <TextField
        label="Time, the other day"
        hint="A quarter of a mile, or whatever the strip is long."
        suffix="s"
        {...NUMBER}
        error={problems.time}
        {...form.register('time')}
      />
      <AirOfDay form={form} day="other" problems={problems} />
      <Answer
        of="a time of another day"
        sum={whole ? passToday(timeS, other, today) : null}
        waits="The air of both days and the time together give what it would be today."
      >
        <p>
          Power is corrected for the air: 1.18 times 990 hPa over the pressure without its vapour,
          times the root of the absolute temperature over 298 K, less 0.18. The time goes with the
          cube root of the one correction over the other, so thicker air is quicker.
        </p>
        <p>
          Source: SAE J1349 of June 1990 as it is commonly reproduced, for 15 to 35 °C and 900 to
          1,050 hPa without the vapour; the cube root is common practice, no published source.
        </p>
      </Answer>
    </>
  );
}
