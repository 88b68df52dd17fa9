import { formatDay, positionWords } from '@quartermark/engine/display';
import type { ComponentLife, FitWindow } from '@quartermark/engine/gear';
import type { Route } from 'next';
import Link from 'next/link';
import styles from './Windows.module.css';

type WindowsProps = {
  life: ComponentLife;
  /** names of cars by id; one that left the garage has none */
  cars: Record<string, string>;
  garageId: string;
};

/** Where a part has been, the newest first. */
export function Windows({ life, cars, garageId }: WindowsProps) {
  return (
    <section aria-labelledby="windows">
      <h2 id="windows">Where it has been</h2>
      {life.windows.length === 0 ? (
        <p className={styles.none}>On no car yet. Its use counts from the day it is fitted.</p>
      ) : (
        <ol className={styles.list}>
          {life.windows.toReversed().map((window) => (
            <li key={window.entry} className={styles.row}>
              <Link href={`/g/${garageId}/car/${window.car}` as Route} prefetch={false}>
                {cars[window.car] ?? 'A car no longer here'}
              </Link>
              {placeWords(window)}: {days(window)}
              {window.conflict ? (
                <p className={styles.conflict}>
                  By the log it was in two places at once; this time was cut short. Put the day or
                  the place right.
                </p>
              ) : null}
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}

function placeWords({ positions }: FitWindow): string {
  const words = positionWords(positions);
  return words === '' ? '' : `, ${words}`;
}

function days({ start, end }: FitWindow): string {
  return end === null ? `since ${formatDay(start)}` : `${formatDay(start)} to ${formatDay(end)}`;
}
