import type { ReactNode } from 'react';
import styles from './Masthead.module.css';
import { ThemeSwitch } from './ThemeSwitch.tsx';
import type { Theme } from './theme.ts';
import { Wordmark } from './Wordmark.tsx';

type MastheadProps = {
  theme: Theme;
  /** the ways around, if the person is inside a garage */
  children?: ReactNode;
};

/** Head of every page. */
export function Masthead({ theme, children }: MastheadProps) {
  return (
    <>
      <a href="#content" className={styles.skip}>
        Skip to the content
      </a>
      <header className={styles.masthead}>
        <Wordmark />
        {children}
        <ThemeSwitch painted={theme} />
      </header>
    </>
  );
}
