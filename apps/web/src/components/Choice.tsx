'use client';

import { Radio } from '@base-ui/react/radio';
import { RadioGroup } from '@base-ui/react/radio-group';
import { type ReactNode, useId } from 'react';
import styles from './Choice.module.css';
import { joinClasses } from './join-classes.ts';

export type ChoiceOption<V extends string> = {
  value: V;
  words: ReactNode;
  /** a second, smaller line */
  hint?: string;
};

export type ChoiceProps<V extends string> = {
  label: string;
  hint?: ReactNode;
  error?: string | null | undefined;
  /** null: nothing chosen yet */
  value: V | null;
  onChange: (value: V) => void;
  options: readonly ChoiceOption<V>[];
  /** `large`: 64 px targets for gloves; `small`: in a settings form */
  size?: 'large' | 'small';
  name?: string;
  hideLabel?: boolean;
  /** `flow`: as wide as their words; `pairs`: two columns; `stack`: each as wide as the form */
  layout?: 'flow' | 'pairs' | 'stack';
};

/** One of a few, all in sight. */
export function Choice<V extends string>({
  label,
  hint,
  error,
  value,
  onChange,
  options,
  size = 'large',
  name,
  hideLabel = false,
  layout = 'flow',
}: ChoiceProps<V>) {
  const id = useId();
  const described = [hint ? `${id}-hint` : '', error ? `${id}-error` : ''].join(' ').trim();
  return (
    <div className={styles.choice}>
      <span id={`${id}-label`} className={joinClasses(styles.label, hideLabel && styles.unseen)}>
        {label}
      </span>
      {hint ? (
        <p id={`${id}-hint`} className={styles.hint}>
          {hint}
        </p>
      ) : null}
      <RadioGroup
        name={name}
        value={value}
        onValueChange={(next) => onChange(next as V)}
        aria-labelledby={`${id}-label`}
        aria-describedby={described || undefined}
        className={joinClasses(styles.options, styles[size], styles[layout])}
      >
        {options.map((option) => (
          <Radio.Root key={option.value} value={option.value} className={styles.option}>
            <span>{option.words}</span>
            {option.hint ? <span className={styles.optionHint}>{option.hint}</span> : null}
          </Radio.Root>
        ))}
      </RadioGroup>
      {error ? (
        <p id={`${id}-error`} role="alert" className={styles.error}>
          {error}
        </p>
      ) : null}
    </div>
  );
}
