'use client';

import { useSuspenseInfiniteQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import Link from 'next/link';
import { useTRPC } from '../client/trpc.ts';
import { useMorePages } from '../client/use-more-pages.ts';
import { Button, EmptyState, PageAnswer } from '../components/index.ts';
import styles from './LettersScreen.module.css';
import { letterPages } from './letter-pages.ts';
import { SentRow } from './SentRow.tsx';
import { sentAnswer } from './sent-words.ts';

/** All that left the house, or was to: to whom, how far it came and what the server said. */
export function SentScreen({ garageId }: { garageId: string }) {
  const trpc = useTRPC();
  const sent = useSuspenseInfiniteQuery(
    trpc.letter.sent.infiniteQueryOptions({ garageId }, letterPages),
  );
  const { more, busy } = useMorePages(sent);
  const rows = sent.data.pages.flatMap((page) => page.rows);
  const zone = sent.data.pages[0]?.garage.zone ?? 'Etc/UTC';
  const home = `/g/${garageId}/letters`;
  return (
    <>
      <PageAnswer
        about="What left the house"
        beneath={<Link href={home as Route}>All letters</Link>}
      >
        {sentAnswer(rows)}
      </PageAnswer>
      {rows.length === 0 ? (
        <EmptyState title="Nothing was sent yet">
          <p>
            Letters leave by mail once a mail server is set, and a webhook is told once it has an
            address: <Link href={`${home}/settings` as Route}>What comes, and when</Link>.
          </p>
        </EmptyState>
      ) : (
        <ul className={styles.list}>
          {rows.map((row) => (
            <SentRow key={row.deliveryId} row={row} zone={zone} />
          ))}
        </ul>
      )}
      {sent.hasNextPage ? (
        <div className={styles.more}>
          <Button onClick={more} busy={busy} busyWords="Fetching more …">
            Show older ones
          </Button>
        </div>
      ) : null}
    </>
  );
}
