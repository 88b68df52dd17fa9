import type { DueLineView } from '@quartermark/api/client';
import { dueLineWords, duePartsWords, formatDay, withStatus } from '@quartermark/engine/display';
import type { Route } from 'next';
import Link from 'next/link';
import { ButtonLink, StateWord } from '../components/index.ts';
import styles from './DueRow.module.css';

type DueRowProps = {
  line: DueLineView;
  garageId: string;
  /** the heading names the car already */
  carIsSaid: boolean;
};

/** One item of a car: its state, when it falls due and what is left, its parts, and the ways on. */
export function DueRow({ line, garageId, carIsSaid }: DueRowProps) {
  const { id, name, carId, carName, status, lastDone } = line;
  const { mark, word, detail } = dueLineWords(line);
  const parts = duePartsWords(line);
  const car = `/g/${garageId}/car/${carId}`;
  return (
    <li className={styles.row}>
      <div className={styles.what}>
        <h3>
          <Link href={`${car}/item/${id}` as Route} prefetch={false} className={styles.name}>
            {name}
          </Link>
        </h3>
        {carIsSaid ? null : (
          <p className={styles.soft}>
            <Link href={car as Route} prefetch={false} className={styles.car}>
              {withStatus(carName, status)}
            </Link>
          </p>
        )}
      </div>
      <div className={styles.when}>
        <p>
          <StateWord kind={mark} words={word} detail={detail} />
        </p>
        {parts === null ? null : <p className={styles.soft}>{parts}</p>}
        {lastDone === null ? null : <p className={styles.soft}>Last done {formatDay(lastDone)}.</p>}
      </div>
      <p className={styles.ways}>
        <ButtonLink
          href={`/g/${garageId}/record/${carId}/service?item=${id}` as Route}
          look="quiet"
        >
          Done now
          <span className={styles.unseen}>
            : {name}, {carName}
          </span>
        </ButtonLink>
      </p>
    </li>
  );
}
