import type { Route } from 'next';
import Link from 'next/link';
import type { ReactNode } from 'react';
import styles from './Button.module.css';
import { joinClasses } from './join-classes.ts';

type ButtonLinkProps = {
  href: Route;
  look?: 'main' | 'plain' | 'quiet';
  className?: string | undefined;
  children: ReactNode;
};

/** A link that looks like a button: it goes somewhere, it does nothing. */
export function ButtonLink({ href, look = 'plain', className, children }: ButtonLinkProps) {
  return (
    <Link href={href} className={joinClasses(styles.button, styles[look], className)}>
      {children}
    </Link>
  );
}
