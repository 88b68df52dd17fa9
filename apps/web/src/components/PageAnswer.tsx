import type { ReactNode } from 'react';
import { ActionBar } from './ActionBar.tsx';
import styles from './PageAnswer.module.css';

type PageAnswerProps = {
  /** what this page is about, small above the answer: a car's name, "Garage" */
  about: string;
  /** the answer, one or two short sentences */
  children: ReactNode;
  /** a line below, such as when it was computed */
  beneath?: ReactNode;
  /** the main action of the screen, in an `ActionBar` */
  action?: ReactNode;
};

/** The first thing on a screen: the question answered in words. */
export function PageAnswer({ about, children, beneath, action }: PageAnswerProps) {
  return (
    <header className={styles.answer}>
      <div className={styles.words}>
        <p className={styles.about}>{about}</p>
        <h1>{children}</h1>
        {beneath ? <div className={styles.beneath}>{beneath}</div> : null}
      </div>
      {action ? <ActionBar>{action}</ActionBar> : null}
    </header>
  );
}
