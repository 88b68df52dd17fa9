'use client';

import type { Route } from 'next';
import Link from 'next/link';
import { usePathname } from 'next/navigation';
import styles from './GarageNav.module.css';

/** The ways around inside a garage. */
export function GarageNav({ garageId }: { garageId: string }) {
  const here = usePathname();
  const ways: { href: Route; words: string }[] = [
    { href: `/g/${garageId}` as Route, words: 'Garage' },
    { href: `/g/${garageId}/record` as Route, words: 'What happened' },
    { href: `/g/${garageId}/gear` as Route, words: 'Sets, tools and people' },
    { href: '/pocket' as Route, words: 'Paddock' },
    { href: `/g/${garageId}/settings` as Route, words: 'Settings' },
  ];
  return (
    <nav aria-label="Garage" className={styles.nav}>
      {ways.map(({ href, words }) => (
        <Link
          key={href}
          href={href}
          aria-current={here === href ? 'page' : undefined}
          className={styles.way}
        >
          {words}
        </Link>
      ))}
    </nav>
  );
}
