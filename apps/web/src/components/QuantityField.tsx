'use client';

import { Field as Base } from '@base-ui/react/field';
import type { Ref } from 'react';
import styles from './Field.module.css';
import { Field, type FieldProps } from './Field.tsx';
import { joinClasses } from './join-classes.ts';
import type { Option } from './SelectField.tsx';

export type Typed<U extends string> = { text: string; unit: U };

export type QuantityFieldProps<U extends string> = FieldProps & {
  /** as typed, letter for letter */
  value: Typed<U>;
  onChange: (value: Typed<U>) => void;
  onBlur?: () => void;
  /** with a single one the unit is plain text, not a list */
  units: readonly Option<U>[];
  name?: string;
  ref?: Ref<HTMLInputElement>;
  placeholder?: string;
};

/** A number with its unit. What was typed stays as typed; nothing is rounded, grouped or converted. */
export function QuantityField<U extends string>({
  value,
  onChange,
  onBlur,
  units,
  name,
  ref,
  placeholder,
  ...field
}: QuantityFieldProps<U>) {
  const single = units.length === 1 ? units[0] : undefined;
  return (
    <Field {...field}>
      <span className={styles.line}>
        <Base.Control
          ref={ref}
          name={name}
          inputMode="decimal"
          autoComplete="off"
          placeholder={placeholder}
          value={value.text}
          onChange={(event) => onChange({ ...value, text: event.currentTarget.value })}
          onBlur={onBlur}
          className={joinClasses(styles.control, styles.figures)}
        />
        {single ? (
          <span className={styles.suffix}>{single.words}</span>
        ) : (
          <select
            aria-label={`Unit: ${field.label}`}
            className={joinClasses(styles.control, styles.unit)}
            value={value.unit}
            onChange={(event) => onChange({ ...value, unit: event.currentTarget.value as U })}
          >
            {units.map((unit) => (
              <option key={unit.value} value={unit.value}>
                {unit.words}
              </option>
            ))}
          </select>
        )}
      </span>
    </Field>
  );
}
