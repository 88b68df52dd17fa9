import type { ReactNode } from 'react';
import { Button } from '../components/index.ts';
import styles from './Rows.module.css';

type RowsProps = { legend: string; hint?: string; more: ReactNode; children: ReactNode };

/** As many rows of fields as are needed, and a press for one more. */
export function Rows({ legend, hint, more, children }: RowsProps) {
  return (
    <fieldset className={styles.rows}>
      <legend>{legend}</legend>
      {hint ? <p className={styles.hint}>{hint}</p> : null}
      {children}
      <div>{more}</div>
    </fieldset>
  );
}

type RowProps = {
  /** which row, for those who hear it: "figure 2" */
  of: string;
  onRemove: () => void;
  children: ReactNode;
};

/** Two fields beside each other, and the way to drop them. */
export function Row({ of, onRemove, children }: RowProps) {
  return (
    <div className={styles.row}>
      {children}
      <div className={styles.remove}>
        <Button look="quiet" aria-label={`Drop ${of}`} onClick={onRemove}>
          Drop
        </Button>
      </div>
    </div>
  );
}
