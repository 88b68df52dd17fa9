import type { ReactNode } from 'react';
import { Why } from '../components/index.ts';
import styles from './AirScreen.module.css';
import type { Summed } from './air-sums.ts';

type AnswerProps = {
  /** what is explained: "density altitude" */
  of: string;
  /** null until all that it needs is there */
  sum: Summed | null;
  /** what is still to be typed in */
  waits: string;
  /** the formula in words, its source, and where it does not hold */
  children: ReactNode;
};

/** A result that follows what is typed, with its reasons; never a number before it can be one. */
export function Answer({ of, sum, waits, children }: AnswerProps) {
  return (
    <div className={styles.sum}>
      <div aria-live="polite" className={styles.sum}>
        {sum === null ? (
          <p className={styles.soft}>{waits}</p>
        ) : (
          <>
            <p className={styles.answer}>{sum.words}</p>
            {sum.beside.map((sentence) => (
              <p key={sentence}>{sentence}</p>
            ))}
          </>
        )}
      </div>
      <Why of={of}>{children}</Why>
    </div>
  );
}
