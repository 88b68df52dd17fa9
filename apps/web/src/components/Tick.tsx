'use client';

import { Checkbox } from '@base-ui/react/checkbox';
import { useId } from 'react';
import styles from './Tick.module.css';

export type TickProps = {
  label: string;
  checked: boolean;
  onChange: (checked: boolean) => void;
  /** a second, smaller line */
  hint?: string;
  name?: string;
};

/** One thing that is so or not so; the whole line is the target. */
export function Tick({ label, checked, onChange, hint, name }: TickProps) {
  const id = useId();
  return (
    // biome-ignore lint/a11y/noLabelWithoutControl: the checkbox renders its own input
    <label className={styles.tick}>
      <Checkbox.Root
        name={name}
        checked={checked}
        onCheckedChange={onChange}
        aria-labelledby={`${id}-label`}
        aria-describedby={hint ? `${id}-hint` : undefined}
        className={styles.box}
      >
        <Checkbox.Indicator className={styles.mark}>✓</Checkbox.Indicator>
      </Checkbox.Root>
      <span>
        <span id={`${id}-label`}>{label}</span>
        {hint ? (
          <span id={`${id}-hint`} className={styles.hint}>
            {hint}
          </span>
        ) : null}
      </span>
    </label>
  );
}
