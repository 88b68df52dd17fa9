'use client';

import type { OverviewPage, OverviewRow } from '@quartermark/api/client';
import { useSuspenseInfiniteQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import { useTRPC } from '../client/trpc.ts';
import { useMorePages } from '../client/use-more-pages.ts';
import { Button, ButtonLink, EmptyState, PageAnswer } from '../components/index.ts';
import { overviewPages } from '../garage/overview-pages.ts';
import styles from './Targets.module.css';

type ChooseCarProps = {
  garageId: string;
  /** for which something was last recorded in this browser */
  lastCarId: string | null;
};

/** The first question of a record: which car it happened to. */
export function ChooseCar({ garageId, lastCarId }: ChooseCarProps) {
  const trpc = useTRPC();
  const overview = useSuspenseInfiniteQuery(
    trpc.garage.overview.infiniteQueryOptions({ garageId }, overviewPages),
  );
  const { data, hasNextPage } = overview;
  const { more, busy } = useMorePages(overview);
  const { garage } = data.pages[0] as OverviewPage;
  const rows = lastFirst(
    data.pages.flatMap((page) => page.rows),
    lastCarId,
  );
  return (
    <>
      <PageAnswer about={garage.name}>
        {rows.length === 0 ? 'There is no car yet.' : 'Which car did it happen to?'}
      </PageAnswer>
      {rows.length === 0 ? (
        <EmptyState
          title="Begin with one car"
          actions={
            <ButtonLink href={`/g/${garageId}/car/add` as Route} look="main">
              Add a car
            </ButtonLink>
          }
        >
          <p>What happens is written down for a car.</p>
        </EmptyState>
      ) : (
        <ul className={styles.list}>
          {rows.map(({ carId, name }) => (
            <li key={carId}>
              <ButtonLink
                href={`/g/${garageId}/record/${carId}` as Route}
                className={styles.target}
              >
                <span>{name}</span>
                {carId === lastCarId ? <span className={styles.hint}>The last one</span> : null}
              </ButtonLink>
            </li>
          ))}
        </ul>
      )}
      {hasNextPage ? (
        <Button onClick={more} busy={busy} busyWords="Fetching more cars …">
          Show more cars
        </Button>
      ) : null}
    </>
  );
}

function lastFirst(rows: readonly OverviewRow[], lastCarId: string | null): OverviewRow[] {
  const isLast = (row: OverviewRow) => row.carId === lastCarId;
  return [...rows.filter(isLast), ...rows.filter((row) => !isLast(row))];
}
