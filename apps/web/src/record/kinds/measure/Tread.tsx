'use client';

import { Controller } from 'react-hook-form';
import { DEPTH_UNITS, type PartProps } from '../../parts.ts';
import { ByCorner, CornerReading } from './ByCorner.tsx';

const GROOVE_WORDS: Readonly<Record<string, string>> = {
  outer: 'Outer',
  middle: 'Middle',
  inner: 'Inner',
  '': 'Tread',
};

/** Depth of the tread, groove by groove; the least of them tells when a tyre is done. */
export function Tread({ form, errors }: PartProps) {
  return (
    <Controller
      control={form.control}
      name="measure.tread"
      render={({ field: { value: rows, onChange } }) => (
        <ByCorner
          rows={rows}
          of="Tread"
          units={DEPTH_UNITS}
          unit={rows[0]?.depth.unit ?? 'mm'}
          onUnit={(unit) =>
            onChange(rows.map((row) => ({ ...row, depth: { ...row.depth, unit } })))
          }
        >
          {({ groove, depth }, at) => (
            <CornerReading
              key={`tread.${at}`}
              label={GROOVE_WORDS[groove] ?? groove}
              path={`tread.${at}.depth`}
              errors={errors}
              units={DEPTH_UNITS}
              value={depth}
              onChange={(read) =>
                onChange(rows.map((row, place) => (place === at ? { ...row, depth: read } : row)))
              }
            />
          )}
        </ByCorner>
      )}
    />
  );
}
