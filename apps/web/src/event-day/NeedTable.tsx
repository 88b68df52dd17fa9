'use client';

import type { EventPage } from '@quartermark/api/client';
import { NEED_GROUP_WORDS, readyWords } from '@quartermark/engine/display';
import type { Route } from 'next';
import Link from 'next/link';
import { useState } from 'react';
import { Button, StateWord } from '../components/index.ts';
import styles from './NeedTable.module.css';
import { NeedTableRow } from './NeedTableRow.tsx';
import { needRows } from './need-rows.ts';
import type { ReadCar } from './of-page.ts';
import { TakenOn } from './TakenOn.tsx';

type NeedTableProps = { page: EventPage; cars: readonly ReadCar[] };

/** Needs down, cars across; what is fine on every car is folded. */
export function NeedTable({ page, cars }: NeedTableProps) {
  const [all, setAll] = useState(false);
  const groups = needRows(cars.map(({ readiness }) => readiness));
  const fine = groups.flatMap(({ rows }) => rows).filter(({ isFine }) => isFine).length;
  const shown = groups
    .map(({ group, rows }) => ({ group, rows: rows.filter(({ isFine }) => all || !isFine) }))
    .filter(({ rows }) => rows.length > 0);
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by the keyboard */}
      <section aria-label="Table of needs" tabIndex={0} className={styles.scroll}>
        <table className={styles.table}>
          <caption className={styles.unseen}>
            What is asked, with what became of it on each car
          </caption>
          <thead>
            <tr>
              <th scope="col">What is asked</th>
              {cars.map((car) => (
                <CarHead key={car.carId} car={car} page={page} />
              ))}
            </tr>
          </thead>
          {shown.map(({ group, rows }) => (
            <tbody key={group}>
              <tr>
                <th scope="rowgroup" colSpan={cars.length + 1} className={styles.group}>
                  {NEED_GROUP_WORDS[group]}
                </th>
              </tr>
              {rows.map((row) => (
                <NeedTableRow key={row.key} row={row} cars={cars} page={page} />
              ))}
            </tbody>
          ))}
        </table>
      </section>
      {fine > 0 ? (
        <Button look="quiet" aria-expanded={all} onClick={() => setAll(!all)}>
          {all
            ? 'Leave out what is fine on every car'
            : `Show ${fine} more that are fine on every car`}
        </Button>
      ) : null}
    </>
  );
}

type CarHeadProps = { car: ReadCar; page: EventPage };

function CarHead({ car, page: { garage } }: CarHeadProps) {
  const { mark, word } = readyWords(car.readiness.verdict, { asOf: garage.today });
  return (
    <th scope="col" className={styles.car}>
      <Link href={`/g/${garage.id}/car/${car.carId}` as Route} prefetch={false}>
        {car.name}
      </Link>
      <StateWord kind={mark} words={word} />
      <TakenOn readiness={car.readiness} today={garage.today} />
    </th>
  );
}
