'use client';

import type { ComponentProps } from 'react';
import { Controller, type UseFormReturn } from 'react-hook-form';
import { QuantityField, SelectField } from '../components/index.ts';
import { FormPair } from '../forms/Form.tsx';
import { PRESSURE_UNITS, TEMPERATURE_UNITS } from '../record/parts.ts';
import { Answer } from './Answer.tsx';
import { type AirPageFields, type Problems, readTyre } from './air-fields.ts';
import { coldPressure } from './air-sums.ts';
import { SpecPressures } from './SpecPressures.tsx';

type ColdPressureProps = {
  garageId: string;
  cars: readonly { carId: string; name: string }[];
  form: UseFormReturn<AirPageFields>;
  fields: AirPageFields;
  problems: Problems;
};

type Asked = 'hot' | 'least' | 'hotAir' | 'coldAir';
type Units = ComponentProps<typeof QuantityField>['units'];

/** What to pump cold so that a tyre is as wanted when it is hot; never below the maker's minimum. */
export function ColdPressure(props: ColdPressureProps) {
  const { garageId, cars, form, fields, problems } = props;
  const { tyre, leastPa } = readTyre(fields, problems);
  const quantity = (name: Asked, units: Units, label: string, hint: string) => (
    <Controller
      control={form.control}
      name={name}
      render={({ field: { value, onChange, onBlur } }) => (
        <QuantityField
          label={label}
          hint={hint}
          units={units}
          name={name}
          value={value}
          onChange={onChange}
          onBlur={onBlur}
          error={problems[name]}
        />
      )}
    />
  );
  const pressure = (name: Asked, label: string, hint: string) =>
    quantity(name, PRESSURE_UNITS, label, hint);
  const temperature = (name: Asked, label: string, hint: string) =>
    quantity(name, TEMPERATURE_UNITS, label, hint);
  return (
    <>
      {cars.length === 0 ? null : (
        <SelectField
          label="Car"
          optional
          hint="Its spec sheet is shown, and its cold pressure is the least."
          options={[
            { value: '', words: 'None' },
            ...cars.map(({ carId, name }) => ({ value: carId, words: name })),
          ]}
          {...form.register('carId')}
        />
      )}
      {fields.carId === '' ? null : (
        <SpecPressures
          garageId={garageId}
          carId={fields.carId}
          onLeast={(least) => form.setValue('least', least, { shouldDirty: true })}
        />
      )}
      <FormPair>
        {pressure('hot', 'Wanted hot', 'As the gauge shows it in the pit lane.')}
        {pressure('least', 'Least, cold', 'The maker’s own, from the door or the manual.')}
      </FormPair>
      <FormPair>
        {temperature('hotAir', 'Air in the tyre, hot', 'Measured, or what such tyres reach.')}
        {temperature('coldAir', 'Air in the tyre, cold', 'Where the car stands.')}
      </FormPair>
      <Answer
        of="cold pressure"
        sum={tyre && coldPressure(tyre, leastPa, fields.hot.unit)}
        waits="The wanted pressure and both temperatures together give what to pump cold."
      >
        <p>
          The pressure of air that is shut in goes with its absolute temperature: what the gauge
          shows and the air around it together, times the cold over the hot, both in kelvins, less
          the air around it. A tyre grows a little when it is hot, and moist air rises more, so what
          the gauge shows hot decides in the end.
        </p>
        <p>
          Source: the law of Gay-Lussac; the air around taken as 1,013 hPa. The least is the maker’s
          and is never gone below here.
        </p>
      </Answer>
    </>
  );
}
