import type { ReactNode } from 'react';
import { joinClasses } from '../components/index.ts';
import styles from './Page.module.css';

type PageProps = {
  children: ReactNode;
  /** `narrow` for forms and reading, `wide` for lists */
  width?: 'narrow' | 'wide';
};

/** The content of a page, where the skip link lands. */
export function Page({ children, width = 'wide' }: PageProps) {
  return (
    <main id="content" tabIndex={-1} className={joinClasses(styles.page, styles[width])}>
      {children}
    </main>
  );
}
