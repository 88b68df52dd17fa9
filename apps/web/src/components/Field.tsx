'use client';

import { Field as Base } from '@base-ui/react/field';
import type { ReactNode } from 'react';
import styles from './Field.module.css';
import { joinClasses } from './join-classes.ts';

export type FieldProps = {
  label: string;
  /** what to put here and why, before anything is wrong */
  hint?: ReactNode;
  /** what is wrong and how to mend it; stands beside the field and is read out with it */
  error?: string | null | undefined;
  /** says "optional" beside the label */
  optional?: boolean;
  className?: string | undefined;
};

/** Label, hint and error around one control; the control must be a Base UI `Field.Control`. */
export function Field({
  label,
  hint,
  error,
  optional,
  className,
  children,
}: FieldProps & { children: ReactNode }) {
  return (
    <Base.Root invalid={Boolean(error)} className={joinClasses(styles.field, className)}>
      <Base.Label className={styles.label}>
        {label}
        {optional ? <span className={styles.optional}> (optional)</span> : null}
      </Base.Label>
      {hint ? <Base.Description className={styles.hint}>{hint}</Base.Description> : null}
      {children}
      <Base.Error match={Boolean(error)} className={styles.error}>
        {error}
      </Base.Error>
    </Base.Root>
  );
}
