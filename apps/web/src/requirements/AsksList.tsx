'use client';

import { READY_FOR_WORDS } from '@quartermark/engine/display';
import { useSuspenseQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import Link from 'next/link';
import { useTRPC } from '../client/trpc.ts';
import styles from './AsksList.module.css';
import { rulesWords } from './requirement-lines.ts';

/** What the garage asks for each sort of use, and the way to change it. */
export function AsksList({ garageId }: { garageId: string }) {
  const trpc = useTRPC();
  const { data } = useSuspenseQuery(trpc.requirements.list.queryOptions({ garageId }));
  return (
    <section className={styles.asks} aria-labelledby="asks">
      <h2 id="asks">What an event asks</h2>
      <p>
        A car is ready when everything that blocks is met until the event is over and the car is
        home. The organiser’s rules and the maker’s manual decide.
      </p>
      <ul className={styles.list}>
        {data.rows.map(({ use, usual, requirements }) => (
          <li key={use}>
            <Link href={`/g/${garageId}/settings/asks/${use}` as Route} prefetch={false}>
              For {READY_FOR_WORDS[use]}
            </Link>
            <span className={styles.whose}>
              {usual ? 'The usual: common practice, no source' : 'This garage’s own'}
              {rulesWords(requirements) === '' ? '' : `; ${rulesWords(requirements)}`}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
