'use client';

import { Controller } from 'react-hook-form';
import { type Option, QuantityField } from '../components/index.ts';
import styles from './CornerQuantities.module.css';
import { ALL_CORNERS, CORNERS, type CornerFields } from './corners.ts';
import { errorAt, type PartProps } from './parts.ts';
import { UnitChoice } from './UnitChoice.tsx';

type CornerQuantitiesProps = PartProps & {
  name: 'session.pressuresCold' | 'session.pressuresHot' | 'measure.pressures';
  path: string;
  label: string;
  units: readonly Option[];
};

/** A quantity at each corner, laid out as one stands behind the car, and one unit for all of them. */
export function CornerQuantities(props: CornerQuantitiesProps) {
  const { form, errors, name, path, label, units } = props;
  return (
    <Controller
      control={form.control}
      name={name}
      render={({ field: { value, onChange } }) => (
        <fieldset className={styles.corners}>
          <legend>{label}</legend>
          <UnitChoice
            of={label}
            units={units}
            value={value.frontLeft.unit}
            onChange={(unit) => onChange(inUnit(value, unit))}
          />
          <div className={styles.grid}>
            {CORNERS.map((corner) => (
              <QuantityField
                key={corner.value}
                label={corner.words}
                name={`${name}.${corner.value}`}
                units={units.filter((unit) => unit.value === value[corner.value].unit)}
                value={value[corner.value]}
                onChange={(read) => onChange({ ...value, [corner.value]: read })}
                error={errorAt(errors, `${path}.${corner.value}`)}
              />
            ))}
          </div>
        </fieldset>
      )}
    />
  );
}

function inUnit(fields: CornerFields, unit: string): CornerFields {
  const changed = ALL_CORNERS.map((corner) => [corner, { ...fields[corner], unit }]);
  return Object.fromEntries(changed);
}
