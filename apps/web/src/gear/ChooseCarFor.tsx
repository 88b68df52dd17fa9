'use client';

import type { OverviewPage } from '@quartermark/api/client';
import { useSuspenseInfiniteQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import { useTRPC } from '../client/trpc.ts';
import { useMorePages } from '../client/use-more-pages.ts';
import { Button, ButtonLink, EmptyState, PageAnswer } from '../components/index.ts';
import { overviewPages } from '../garage/overview-pages.ts';
import styles from '../record/Targets.module.css';
import { type PieceWhere, usePiece } from './use-piece.ts';

/** For a part that is on no car: which car it goes on. */
export function ChooseCarFor(where: PieceWhere) {
  const { garageId, gearId } = where;
  const trpc = useTRPC();
  const { row } = usePiece(where);
  const overview = useSuspenseInfiniteQuery(
    trpc.garage.overview.infiniteQueryOptions({ garageId }, overviewPages),
  );
  const { data, hasNextPage } = overview;
  const { more, busy } = useMorePages(overview);
  const rows = data.pages.flatMap((page: OverviewPage) => page.rows);
  return (
    <>
      <PageAnswer about={row.gear.name}>
        {rows.length === 0 ? 'There is no car yet.' : 'Which car does it go on?'}
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
          <p>A part counts what the car does that it is fitted to.</p>
        </EmptyState>
      ) : (
        <ul className={styles.list}>
          {rows.map(({ carId, name }) => (
            <li key={carId}>
              <ButtonLink
                href={`/g/${garageId}/record/${carId}/fit?component=${gearId}` as Route}
                className={styles.target}
              >
                {name}
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
