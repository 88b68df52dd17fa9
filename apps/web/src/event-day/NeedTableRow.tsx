'use client';

import type { EventPage } from '@quartermark/api/client';
import { marginWords, needStatusWords } from '@quartermark/engine/display';
import type { Need } from '@quartermark/engine/readiness';
import { useId, useState } from 'react';
import { StateWord } from '../components/index.ts';
import { NeedDetail } from './NeedDetail.tsx';
import styles from './NeedTable.module.css';
import type { NeedRow } from './need-rows.ts';
import { type ReadCar, saidIn } from './of-page.ts';

type NeedTableRowProps = { row: NeedRow; cars: readonly ReadCar[]; page: EventPage };

/** A need across the cars; the cell that is pressed opens beneath, over the whole width. */
export function NeedTableRow({ row, cars, page }: NeedTableRowProps) {
  const [open, setOpen] = useState<string | null>(null);
  const id = useId();
  const car = cars.find(({ carId }) => carId === open);
  const need = car ? row.needs[car.carId] : undefined;
  return (
    <>
      <tr>
        <th scope="row" className={styles.title}>
          {row.title}
        </th>
        {cars.map((one) => {
          const asked = row.needs[one.carId];
          return (
            <td key={one.carId}>
              {asked ? (
                <Cell
                  need={asked}
                  car={one}
                  page={page}
                  panel={id}
                  isOpen={open === one.carId}
                  onPress={() => setOpen(open === one.carId ? null : one.carId)}
                />
              ) : (
                <span className={styles.notAsked}>not asked</span>
              )}
            </td>
          );
        })}
      </tr>
      {car && need ? (
        <tr>
          <td id={id} colSpan={cars.length + 1} className={styles.panel}>
            <p className={styles.which}>
              {need.title}, {car.name}
            </p>
            <NeedDetail key={`${car.carId} ${need.id}`} need={need} car={car} page={page} />
          </td>
        </tr>
      ) : null}
    </>
  );
}

type CellProps = {
  need: Need;
  car: ReadCar;
  page: EventPage;
  panel: string;
  isOpen: boolean;
  onPress: () => void;
};

function Cell({ need, car, page, panel, isOpen, onPress }: CellProps) {
  const { mark, word } = needStatusWords(need.status);
  return (
    <button
      type="button"
      className={styles.cell}
      aria-expanded={isOpen}
      aria-controls={isOpen ? panel : undefined}
      onClick={onPress}
    >
      <span className={styles.unseen}>
        {need.title}, {car.name}:{' '}
      </span>
      <StateWord kind={mark} words={word} />
      {need.margin ? (
        <span className={styles.margin}>{marginWords(need.margin, saidIn(page, car))}</span>
      ) : null}
      {need.accepted ? <span className={styles.margin}>taken on by {need.accepted.by}</span> : null}
      {need.weight === 'advice' && need.status !== 'met' ? (
        <span className={styles.margin}>advice</span>
      ) : null}
    </button>
  );
}
