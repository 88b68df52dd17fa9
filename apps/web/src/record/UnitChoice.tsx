'use client';

import { type Option, SelectField } from '../components/index.ts';

type UnitChoiceProps = {
  /** what is read in it */
  of: string;
  units: readonly Option[];
  value: string;
  onChange: (unit: string) => void;
};

/** The unit of several readings at once; what was typed is not converted. */
export function UnitChoice({ of, units, value, onChange }: UnitChoiceProps) {
  return (
    <SelectField
      label={`Unit: ${of}`}
      options={units}
      value={value}
      onChange={(event) => onChange(event.currentTarget.value)}
    />
  );
}
