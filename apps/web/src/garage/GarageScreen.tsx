'use client';

import type { OverviewPage } from '@quartermark/api/client';
import { formatDay, garageSentences } from '@quartermark/engine/display';
import { useSuspenseInfiniteQuery, useSuspenseQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import Link from 'next/link';
import { BoardKey } from '../board/BoardKey.tsx';
import { BoardTable } from '../board/BoardTable.tsx';
import { SeasonHead } from '../board/SeasonHead.tsx';
import { seasonOf } from '../board/season.ts';
import { useTRPC } from '../client/trpc.ts';
import { useMorePages } from '../client/use-more-pages.ts';
import { Button, ButtonLink, PageAnswer } from '../components/index.ts';
import { NextEventLine } from '../event-day/NextEventLine.tsx';
import { CarRow } from './CarRow.tsx';
import { EventToday } from './EventToday.tsx';
import { eventOfToday } from './event-of-today.ts';
import styles from './GarageScreen.module.css';
import { NoCarYet } from './NoCarYet.tsx';
import { overviewPages } from './overview-pages.ts';
import { useHeldOrder } from './use-held-order.ts';

type GarageScreenProps = {
  garageId: string;
  /** the car this browser recorded for last; null where it never did */
  lastCarId: string | null;
};

/** The garage: what needs a hand today, then the cars by urgency on the board of the season. */
export function GarageScreen({ garageId, lastCarId }: GarageScreenProps) {
  const trpc = useTRPC();
  const overview = useSuspenseInfiniteQuery(
    trpc.garage.overview.infiniteQueryOptions({ garageId }, overviewPages),
  );
  const { data, hasNextPage } = overview;
  const { more, busy } = useMorePages(overview);
  const first = data.pages[0] as OverviewPage;
  const latest = data.pages.at(-1) ?? first;
  const { garage } = latest;
  const proper = data.pages.flatMap((page) => page.rows);
  const { rows, moved, sortAgain } = useHeldOrder(proper, ({ carId }) => carId);
  const { data: calendar } = useSuspenseQuery(trpc.event.list.queryOptions({ garageId }));
  const season = seasonOf(calendar);
  const on = eventOfToday(calendar);
  const { cars, needsAHand, road } = latest;
  const [answer, ...rest] = garageSentences({ cars, needsAHand, road, rows: proper });

  return (
    <div className={styles.garage}>
      {on ? <EventToday on={on} garage={garage} lastCarId={lastCarId} rows={rows} /> : null}
      <PageAnswer
        about={garage.name}
        beneath={
          <>
            {rest.length > 0 ? <p className={styles.rest}>{rest.join(' ')}</p> : null}
            {formatDay(garage.today)}, {garage.zone}
            {latest.cars > 0 ? (
              <p>
                <Link href={`/g/${garageId}/due` as Route} className={styles.way}>
                  All that is due, by its day
                </Link>
              </p>
            ) : null}
            {on ? null : <NextEventLine calendar={calendar} className={styles.way} />}
          </>
        }
        action={latest.cars > 0 ? <WhatHappened garageId={garageId} /> : null}
      >
        {answer}
      </PageAnswer>
      {latest.cars === 0 ? (
        <NoCarYet garageId={garageId} />
      ) : (
        <>
          <ListHead
            garageId={garageId}
            cars={latest.cars}
            shown={rows.length}
            moved={moved}
            sortAgain={sortAgain}
          />
          <SeasonHead season={season} garageId={garageId} />
          <ul className={styles.list}>
            {rows.map((row) => (
              <CarRow key={row.carId} row={row} garage={garage} season={season} />
            ))}
          </ul>
          <BoardKey />
          <BoardTable rows={rows} season={season} garageId={garageId} />
          {hasNextPage ? (
            <div className={styles.more}>
              <Button onClick={more} busy={busy} busyWords="Fetching more cars …">
                Show more cars
              </Button>
            </div>
          ) : null}
        </>
      )}
    </div>
  );
}

function WhatHappened({ garageId }: { garageId: string }) {
  return (
    <ButtonLink href={`/g/${garageId}/record` as Route} look="main">
      What happened
    </ButtonLink>
  );
}

type ListHeadProps = {
  garageId: string;
  cars: number;
  shown: number;
  moved: boolean;
  sortAgain: () => void;
};

function ListHead({ garageId, cars, shown, moved, sortAgain }: ListHeadProps) {
  const count = cars === 1 ? '1 car' : `${cars} cars`;
  const part = shown < cars ? `${shown} of ${count}` : count;
  return (
    <div className={styles.head}>
      <p>
        {moved ? (
          <>
            {part}, order out of date{' '}
            <Button look="quiet" onClick={sortAgain}>
              Sort by urgency
            </Button>
          </>
        ) : (
          `${part}${cars > 1 ? ', most urgent first' : ''}`
        )}
      </p>
      <ButtonLink href={`/g/${garageId}/car/add` as Route}>Add a car</ButtonLink>
    </div>
  );
}
