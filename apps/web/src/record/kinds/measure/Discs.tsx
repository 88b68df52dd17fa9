'use client';

import { Controller } from 'react-hook-form';
import { TextField } from '../../../components/index.ts';
import { DEPTH_UNITS, NUMBER, type PartProps } from '../../parts.ts';
import { ByCorner, CornerReading } from './ByCorner.tsx';

/** Iron discs are measured, carbon-ceramic ones weighed. */
export function Discs({ form, errors }: PartProps) {
  return (
    <Controller
      control={form.control}
      name="measure.discs"
      render={({ field: { value: rows, onChange } }) => {
        const change = (at: number, how: Partial<(typeof rows)[number]>) =>
          onChange(rows.map((row, place) => (place === at ? { ...row, ...how } : row)));
        return (
          <ByCorner
            rows={rows}
            of="Brake discs"
            units={DEPTH_UNITS}
            unit={rows[0]?.thickness.unit ?? 'mm'}
            onUnit={(unit) =>
              onChange(rows.map((row) => ({ ...row, thickness: { ...row.thickness, unit } })))
            }
          >
            {({ thickness, massG }, at) => [
              <CornerReading
                key={`discs.${at}.thickness`}
                label="Thickness"
                path={`discs.${at}.thickness`}
                errors={errors}
                units={DEPTH_UNITS}
                value={thickness}
                onChange={(read) => change(at, { thickness: read })}
              />,
              <TextField
                key={`discs.${at}.massG`}
                label="Or weight"
                suffix="g"
                {...NUMBER}
                name={`measure.discs.${at}.massG`}
                value={massG}
                onChange={(event) => change(at, { massG: event.currentTarget.value })}
                error={errors[`entry.discs.${at}.massG`]}
              />,
            ]}
          </ByCorner>
        );
      }}
    />
  );
}
