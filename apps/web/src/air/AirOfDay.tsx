'use client';

import { Controller, type UseFormReturn } from 'react-hook-form';
import { QuantityField, TextField } from '../components/index.ts';
import { FormPair } from '../forms/Form.tsx';
import { NUMBER, TEMPERATURE_UNITS } from '../record/parts.ts';
import type { AirPageFields, Problems } from './air-fields.ts';

const BAROMETER_UNITS = [
  { value: 'hPa', words: 'hPa' },
  { value: 'inHg', words: 'inHg' },
] as const;
const HEIGHT_UNITS = [
  { value: 'm', words: 'm' },
  { value: 'ft', words: 'ft' },
] as const;

type AirOfDayProps = {
  form: UseFormReturn<AirPageFields>;
  day: 'today' | 'other';
  problems: Problems;
};

/** Temperature, pressure and humidity of a day. */
export function AirOfDay({ form, day, problems }: AirOfDayProps) {
  const of = day === 'today' ? '' : ', the other day';
  return (
    <>
      <FormPair>
        <Controller
          control={form.control}
          name={`${day}.temperature`}
          render={({ field: { value, onChange, onBlur, name } }) => (
            <QuantityField
              label={`Temperature${of}`}
              hint="In the shade."
              units={TEMPERATURE_UNITS}
              name={name}
              value={value}
              onChange={onChange}
              onBlur={onBlur}
              error={problems[`${day}.temperature`]}
            />
          )}
        />
        <TextField
          label={`Humidity${of}`}
          hint="Relative, as weather reports give it."
          suffix="%"
          {...NUMBER}
          error={problems[`${day}.humidity`]}
          {...form.register(`${day}.humidity`)}
        />
      </FormPair>
      <FormPair>
        <Controller
          control={form.control}
          name={`${day}.barometer`}
          render={({ field: { value, onChange, onBlur, name } }) => (
            <QuantityField
              label={`Air pressure${of}`}
              hint="As a barometer shows it there, or as a weather report gives it."
              units={BAROMETER_UNITS}
              name={name}
              value={value}
              onChange={onChange}
              onBlur={onBlur}
              error={problems[`${day}.barometer`]}
            />
          )}
        />
        <Controller
          control={form.control}
          name={`${day}.height`}
          render={({ field: { value, onChange, onBlur, name } }) => (
            <QuantityField
              label={`Height of the place${of}`}
              hint="Only with a weather report: it speaks as if from sea level."
              optional
              units={HEIGHT_UNITS}
              name={name}
              value={value}
              onChange={onChange}
              onBlur={onBlur}
              error={problems[`${day}.height`]}
            />
          )}
        />
      </FormPair>
    </>
  );
}
