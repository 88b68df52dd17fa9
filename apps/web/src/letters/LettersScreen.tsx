'use client';

import { useSuspenseInfiniteQuery, useSuspenseQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import Link from 'next/link';
import { useTRPC } from '../client/trpc.ts';
import { useMorePages } from '../client/use-more-pages.ts';
import { Button, PageAnswer } from '../components/index.ts';
import { LetterRow } from './LetterRow.tsx';
import styles from './LettersScreen.module.css';
import { letterPages } from './letter-pages.ts';
import { lettersAnswer } from './letters-words.ts';
import { TonightLetter } from './TonightLetter.tsx';

type LettersScreenProps = {
  garageId: string;
  /** owner and admin see what left the house */
  keeps: boolean;
};

/** A member's own letters, the newest first, below what the next one says so far. */
export function LettersScreen({ garageId, keeps }: LettersScreenProps) {
  const trpc = useTRPC();
  const letters = useSuspenseInfiniteQuery(
    trpc.letter.list.infiniteQueryOptions({ garageId }, letterPages),
  );
  const { data: unread } = useSuspenseQuery(trpc.letter.unread.queryOptions({ garageId }));
  const { more, busy } = useMorePages(letters);
  const rows = letters.data.pages.flatMap((page) => page.rows);
  const zone = letters.data.pages[0]?.garage.zone ?? 'Etc/UTC';
  const newest = rows.find(({ read }) => !read);
  const home = `/g/${garageId}/letters`;
  return (
    <>
      <PageAnswer
        about="Letters"
        beneath={
          <>
            {newest ? (
              <p>
                The newest:{' '}
                <Link href={`${home}/${newest.letterId}` as Route} prefetch={false}>
                  {newest.subject}
                </Link>
              </p>
            ) : null}
            <p className={styles.ways}>
              <Link href={`${home}/settings` as Route}>What comes, and when</Link>
              <Link href={`${home}/put-off` as Route}>What is put off</Link>
              {keeps ? <Link href={`${home}/sent` as Route}>What left the house</Link> : null}
            </p>
          </>
        }
      >
        {lettersAnswer(unread.count, rows.length > 0)}
      </PageAnswer>
      <TonightLetter garageId={garageId} />
      <section aria-label="Letters so far" className={styles.section}>
        <h2>Letters so far</h2>
        {rows.length === 0 ? (
          <p>
            None yet. A night in which something falls due, a look is missed or an event comes near
            has a letter, and it stays here as it was sent.
          </p>
        ) : (
          <ul className={styles.list}>
            {rows.map((row) => (
              <LetterRow key={row.letterId} row={row} garageId={garageId} zone={zone} />
            ))}
          </ul>
        )}
        {letters.hasNextPage ? (
          <div className={styles.more}>
            <Button onClick={more} busy={busy} busyWords="Fetching more …">
              Show older letters
            </Button>
          </div>
        ) : null}
      </section>
    </>
  );
}
