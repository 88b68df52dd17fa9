import type { ReactNode } from 'react';
import styles from './ActionBar.module.css';

/** The main action of a page: within a thumb's reach on a phone, at the foot of the page elsewhere. */
export function ActionBar({ children }: { children: ReactNode }) {
  return <div className={styles.bar}>{children}</div>;
}
