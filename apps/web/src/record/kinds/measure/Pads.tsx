'use client';

import { Controller } from 'react-hook-form';
import { DEPTH_UNITS, type PartProps } from '../../parts.ts';
import { ByCorner, CornerReading } from './ByCorner.tsx';

const SIDES = [
  { side: 'inner', words: 'Inner' },
  { side: 'outer', words: 'Outer' },
] as const;

/** What is left of the pads, inner and outer at each corner. */
export function Pads({ form, errors }: PartProps) {
  return (
    <Controller
      control={form.control}
      name="measure.pads"
      render={({ field: { value: rows, onChange } }) => (
        <ByCorner
          rows={rows}
          of="Brake pads"
          units={DEPTH_UNITS}
          unit={rows[0]?.inner.unit ?? 'mm'}
          onUnit={(unit) =>
            onChange(
              rows.map((row) => ({
                ...row,
                inner: { ...row.inner, unit },
                outer: { ...row.outer, unit },
              })),
            )
          }
        >
          {(pads, at) =>
            SIDES.map(({ side, words }) => (
              <CornerReading
                key={`pads.${at}.${side}`}
                label={words}
                path={`pads.${at}.${side}`}
                errors={errors}
                units={DEPTH_UNITS}
                value={pads[side]}
                onChange={(read) =>
                  onChange(
                    rows.map((row, place) => (place === at ? { ...row, [side]: read } : row)),
                  )
                }
              />
            ))
          }
        </ByCorner>
      )}
    />
  );
}
