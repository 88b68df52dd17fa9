'use client';

import { NumberField } from '@base-ui/react/number-field';
import { Field, type FieldProps } from './Field.tsx';
import styles from './Stepper.module.css';

export type StepperProps = FieldProps & {
  /** null: not given */
  value: number | null;
  onChange: (value: number | null) => void;
  min?: number;
  max?: number;
  step?: number;
  /** unit behind the number */
  unit?: string;
  name?: string;
};

/** A count with a large minus and plus, for one hand and gloves; the number can be typed as well. */
export function Stepper({
  value,
  onChange,
  min = 0,
  max,
  step = 1,
  unit,
  name,
  ...field
}: StepperProps) {
  return (
    <Field {...field}>
      <NumberField.Root
        value={value}
        onValueChange={onChange}
        min={min}
        max={max}
        step={step}
        name={name}
        locale="en"
        allowOutOfRange
      >
        <NumberField.Group className={styles.group}>
          <NumberField.Decrement className={styles.press} aria-label={`Less: ${field.label}`}>
            &minus;
          </NumberField.Decrement>
          <NumberField.Input className={styles.input} />
          {unit ? <span className={styles.unit}>{unit}</span> : null}
          <NumberField.Increment className={styles.press} aria-label={`More: ${field.label}`}>
            +
          </NumberField.Increment>
        </NumberField.Group>
      </NumberField.Root>
    </Field>
  );
}
