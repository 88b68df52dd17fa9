'use client';

import { type ReactNode, useState } from 'react';
import styles from './Fold.module.css';

type FoldProps = {
  title: string;
  /** what is filled in there, so that it need not be opened to be known */
  now?: string | undefined;
  children: ReactNode;
  /** something in it is wrong: it stays open until that is mended */
  wrong?: boolean;
  /** open from the start */
  unfolded?: boolean;
};

/** Fields that most people leave alone, one press away. They stay in the form while folded. */
export function Fold({ title, now, children, wrong = false, unfolded = false }: FoldProps) {
  const [open, setOpen] = useState(unfolded);
  return (
    <details
      className={styles.fold}
      open={open || wrong}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary className={styles.title}>
        {title}
        {now ? <span className={styles.now}>: {now}</span> : null}
      </summary>
      <div className={styles.fields}>{children}</div>
    </details>
  );
}
