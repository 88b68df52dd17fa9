import type { ReactNode } from 'react';
import { joinClasses } from './join-classes.ts';
import styles from './Notice.module.css';

type NoticeProps = {
  /** `alarm` is read out at once; `caution` is a safety caution, always shown before the work */
  tone?: 'plain' | 'alarm' | 'caution';
  title?: string;
  children: ReactNode;
  actions?: ReactNode;
};

/** A few sentences set apart by a rule at the side. */
export function Notice({ tone = 'plain', title, children, actions }: NoticeProps) {
  return (
    <div
      role={tone === 'alarm' ? 'alert' : undefined}
      className={joinClasses(styles.notice, styles[tone])}
    >
      {title ? <p className={styles.title}>{title}</p> : null}
      <div className={styles.body}>{children}</div>
      {actions ? <div className={styles.actions}>{actions}</div> : null}
    </div>
  );
}
