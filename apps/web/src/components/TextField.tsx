'use client';

import { Field as Base } from '@base-ui/react/field';
import type { ComponentProps } from 'react';
import styles from './Field.module.css';
import { Field, type FieldProps } from './Field.tsx';
import { joinClasses } from './join-classes.ts';

export type TextFieldProps = FieldProps &
  Omit<ComponentProps<'input'>, 'className' | 'size'> & {
    /** unit behind the control, in words or as a sign */
    suffix?: string;
    /** set in the figures face, for quantities */
    figures?: boolean;
  };

/** One line of text. Takes react-hook-form's `register(name)` as it is. */
export function TextField({
  label,
  hint,
  error,
  optional,
  className,
  suffix,
  figures,
  ...input
}: TextFieldProps) {
  return (
    <Field label={label} hint={hint} error={error} optional={optional} className={className}>
      <span className={styles.line}>
        <Base.Control
          render={<input {...input} />}
          name={input.name}
          className={joinClasses(styles.control, figures && styles.figures)}
        />
        {suffix ? <span className={styles.suffix}>{suffix}</span> : null}
      </span>
    </Field>
  );
}
