'use client';

import { Field as Base } from '@base-ui/react/field';
import type { ComponentProps } from 'react';
import styles from './Field.module.css';
import { Field, type FieldProps } from './Field.tsx';

export type Option<V extends string = string> = { value: V; words: string };

export type SelectFieldProps = FieldProps &
  Omit<ComponentProps<'select'>, 'className' | 'size'> & { options: readonly Option[] };

/** The browser's own list: the best one a phone has. Takes react-hook-form's `register(name)`. */
export function SelectField({
  label,
  hint,
  error,
  optional,
  className,
  options,
  ...select
}: SelectFieldProps) {
  return (
    <Field label={label} hint={hint} error={error} optional={optional} className={className}>
      <Base.Control
        name={select.name}
        className={styles.control}
        render={
          <select {...select}>
            {options.map((option) => (
              <option key={option.value} value={option.value}>
                {option.words}
              </option>
            ))}
          </select>
        }
      />
    </Field>
  );
}
