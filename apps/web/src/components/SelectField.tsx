'use client';

import { Field as Base } from '@base-ui/react/field';
import type { ComponentProps } from 'react';
import styles from './Field.module.css';
import { Field, type FieldProps } from './Field.tsx';

export type Option<V extends string = string> = { value: V; words: string };

/** Options that stand together under a name. */
export type OptionGroup = { name: string; options: readonly Option[] };

export type SelectFieldProps = FieldProps &
  Omit<ComponentProps<'select'>, 'className' | 'size'> & {
    options: readonly Option[];
    /** further options, after the others */
    groups?: readonly OptionGroup[];
  };

/** The browser's own list: the best one a phone has. Takes react-hook-form's `register(name)`. */
export function SelectField({
  label,
  hint,
  error,
  optional,
  className,
  options,
  groups = [],
  ...select
}: SelectFieldProps) {
  return (
    <Field label={label} hint={hint} error={error} optional={optional} className={className}>
      <Base.Control
        name={select.name}
        className={styles.control}
        render={
          <select {...select}>
            <Options of={options} />
            {groups.map((group) => (
              <optgroup key={group.name} label={group.name}>
                <Options of={group.options} />
              </optgroup>
            ))}
          </select>
        }
      />
    </Field>
  );
}

function Options({ of }: { of: readonly Option[] }) {
  return of.map((option) => (
    <option key={option.value} value={option.value}>
      {option.words}
    </option>
  ));
}
