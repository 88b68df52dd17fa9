import styles from './Amount.module.css';
import { joinClasses } from './join-classes.ts';

type AmountProps = {
  /** the number as text, formatted or as typed */
  figure: string;
  unit: string;
  size?: 'body' | 'large';
};

/** A quantity: tabular figures with the unit beside them, never apart at a line's end. */
export function Amount({ figure, unit, size = 'body' }: AmountProps) {
  return (
    <span className={joinClasses(styles.amount, size === 'large' && styles.large)}>
      {figure}&nbsp;<span className={styles.unit}>{unit}</span>
    </span>
  );
}
