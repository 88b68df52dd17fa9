'use client';

import type { GarageView, OilComparedPage } from '@quartermark/api/client';
import { comparedAnswer, type OilUnits, perWords } from '@quartermark/engine/display';
import { useSuspenseInfiniteQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import { useTRPC } from '../client/trpc.ts';
import { useMorePages } from '../client/use-more-pages.ts';
import { Button, ButtonLink, EmptyState, PageAnswer } from '../components/index.ts';
import { ComparedCar } from './ComparedCar.tsx';
import { ComparedTable } from './ComparedTable.tsx';
import { type IntervalScale, intervalScale } from './interval-scale.ts';
import styles from './OilComparedScreen.module.css';
import { oilPages } from './oil-pages.ts';

/** The cars' oil use on one scale, those that got worse first. */
export function OilComparedScreen({ garageId }: { garageId: string }) {
  const trpc = useTRPC();
  const compared = useSuspenseInfiniteQuery(
    trpc.oil.compare.infiniteQueryOptions({ garageId }, oilPages),
  );
  const { more, busy } = useMorePages(compared);
  const { pages } = compared.data;
  const { garage } = pages.at(-1) ?? (pages[0] as OilComparedPage);
  const rows = pages.flatMap((page) => page.rows);
  const units: OilUnits = garage;
  const scale = intervalScale(rows, units);
  return (
    <>
      <PageAnswer about="Oil compared" beneath="By what is on record; look at the stick.">
        {comparedAnswer(rows, units)}
      </PageAnswer>
      {rows.length === 0 ? (
        <NoCar garage={garage} />
      ) : (
        <>
          <Scale scale={scale} units={units} />
          <ul className={styles.list}>
            {rows.map((row) => (
              <ComparedCar key={row.carId} row={row} scale={scale} units={units} garage={garage} />
            ))}
          </ul>
          {compared.hasNextPage ? (
            <div className={styles.more}>
              <Button onClick={more} busy={busy} busyWords="Fetching more cars …">
                Show more cars
              </Button>
            </div>
          ) : null}
          <p className={styles.key}>
            A dot is the likely use, eight times in ten it lies on its line; broken where it is hard
            use (circuit, autocross). A hollow dot is a year ago. A tall mark is your own limit on
            the road. A car counts as worse where that is so nine times in ten, as likely worse
            three times in four.
          </p>
          <ComparedTable rows={rows} garage={garage} />
        </>
      )}
    </>
  );
}

type ScaleProps = { scale: IntervalScale; units: OilUnits };

/** The numbers of the scale, above the drawings. */
function Scale({ scale, units }: ScaleProps) {
  return (
    <div className={styles.scale} aria-hidden="true">
      <span className={styles.per}>{perWords(units)}</span>
      <span className={styles.ticks}>
        {scale.ticks.map(({ at, words }) => (
          <span key={words} className={styles.tick} style={{ left: `${at * 100}%` }}>
            {words}
          </span>
        ))}
      </span>
    </div>
  );
}

function NoCar({ garage }: { garage: GarageView }) {
  return (
    <EmptyState
      title="No car yet"
      actions={
        <ButtonLink href={`/g/${garage.id}/car/add` as Route} look="main">
          Add a car
        </ButtonLink>
      }
    >
      <p>Add a car and record what its stick shows; two readings make a beginning.</p>
    </EmptyState>
  );
}
