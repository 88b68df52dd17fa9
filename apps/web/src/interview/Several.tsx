'use client';

import { useId } from 'react';
import styles from './Several.module.css';

type SeveralProps<V extends string> = {
  label: string;
  hint: string;
  options: readonly { value: V; words: string }[];
  chosen: readonly V[];
  onPress: (value: V) => void;
};

/** Some of a few, all in sight, with targets for gloves. */
export function Several<V extends string>({
  label,
  hint,
  options,
  chosen,
  onPress,
}: SeveralProps<V>) {
  const id = useId();
  return (
    <fieldset className={styles.several} aria-describedby={id}>
      <legend>{label}</legend>
      <p id={id} className={styles.hint}>
        {hint}
      </p>
      <div className={styles.options}>
        {options.map(({ value, words }) => (
          <button
            key={value}
            type="button"
            aria-pressed={chosen.includes(value)}
            onClick={() => onPress(value)}
            className={styles.option}
          >
            {words}
          </button>
        ))}
      </div>
    </fieldset>
  );
}
