import type { ReactNode } from 'react';
import styles from './EmptyState.module.css';

type EmptyStateProps = { title: string; children: ReactNode; actions?: ReactNode };

/** Nothing here yet: says why and offers the next step. */
export function EmptyState({ title, children, actions }: EmptyStateProps) {
  return (
    <section className={styles.empty}>
      <h2>{title}</h2>
      <div className={styles.body}>{children}</div>
      {actions ? <div className={styles.actions}>{actions}</div> : null}
    </section>
  );
}
