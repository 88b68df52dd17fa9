'use client';

import type { Route } from 'next';
import Link from 'next/link';
import { usePathname } from 'next/navigation';
import { useId, useState } from 'react';
import { joinClasses } from '../components/index.ts';
import styles from './GarageNav.module.css';
import { LettersWay } from './LettersWay.tsx';

type Way = { href: Route; words: string };

type GarageNavProps = {
  garageId: string;
  /** letters not read; null: it could not be asked */
  unread: number | null;
};

/** The ways around inside a garage; on a phone those that can wait lie behind "More". */
export function GarageNav({ garageId, unread }: GarageNavProps) {
  const here = usePathname();
  const [open, setOpen] = useState(false);
  // where one goes, the list of ways is done with
  const [openedAt, setOpenedAt] = useState(here);
  if (openedAt !== here) {
    setOpenedAt(here);
    setOpen(false);
  }
  const id = useId();
  const home = `/g/${garageId}`;
  const first: Way[] = [
    { href: home as Route, words: 'Garage' },
    { href: `${home}/due` as Route, words: 'What is due' },
    { href: `${home}/record` as Route, words: 'What happened' },
    { href: `${home}/events` as Route, words: 'Events' },
    { href: '/pocket' as Route, words: 'Paddock' },
    { href: `${home}/findings` as Route, words: 'Findings' },
    { href: `${home}/gear` as Route, words: 'Sets, tools and people' },
  ];
  const rest: Way[] = [
    { href: `${home}/log` as Route, words: 'Log' },
    { href: `${home}/oil` as Route, words: 'Oil compared' },
    { href: `${home}/air` as Route, words: 'Air and pressures' },
    { href: `${home}/said` as Route, words: 'We said, it was' },
    { href: `${home}/settings` as Route, words: 'Settings' },
  ];
  const inRest = rest.some(({ href }) => href === here);
  return (
    <nav aria-label="Garage" className={styles.nav}>
      <Ways ways={first} here={here} />
      <LettersWay garageId={garageId} here={here} unread={unread} />
      <button
        type="button"
        aria-expanded={open}
        aria-controls={id}
        className={joinClasses(styles.way, styles.more)}
        data-inside={inRest || undefined}
        onClick={() => setOpen(!open)}
      >
        More
      </button>
      <div id={id} className={joinClasses(styles.rest, open && styles.open)}>
        <Ways ways={rest} here={here} />
      </div>
    </nav>
  );
}

function Ways({ ways, here }: { ways: readonly Way[]; here: string }) {
  return ways.map(({ href, words }) => (
    <Link
      key={href}
      href={href}
      aria-current={here === href ? 'page' : undefined}
      className={styles.way}
    >
      {words}
    </Link>
  ));
}
