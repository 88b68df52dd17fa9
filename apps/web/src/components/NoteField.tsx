'use client';

import { Field as Base } from '@base-ui/react/field';
import type { ComponentProps } from 'react';
import styles from './Field.module.css';
import { Field, type FieldProps } from './Field.tsx';

export type NoteFieldProps = FieldProps & Omit<ComponentProps<'textarea'>, 'className'>;

/** Several lines of text. Takes react-hook-form's `register(name)` as it is. */
export function NoteField({ label, hint, error, optional, className, ...area }: NoteFieldProps) {
  return (
    <Field label={label} hint={hint} error={error} optional={optional} className={className}>
      <Base.Control render={<textarea {...area} />} name={area.name} className={styles.control} />
    </Field>
  );
}
