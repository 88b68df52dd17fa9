import type { ReactNode } from 'react';
import styles from './ActionBar.module.css';

/** The main action of a screen: at the foot of a phone within the thumb's reach, in the text elsewhere. */
export function ActionBar({ children }: { children: ReactNode }) {
  return <div className={styles.bar}>{children}</div>;
}
