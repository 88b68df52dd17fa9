'use client';

import type { UrgentCar } from '@quartermark/api/client';
import { mayLayAside, urgentKey } from '@quartermark/engine/display';
import type { ReactNode } from 'react';
import { Button, StateMark } from '../components/index.ts';
import { isSeen } from './seen.ts';
import styles from './UrgentFacts.module.css';
import { useSeen } from './use-seen.ts';

/** So many are told at once; a page is about something else. */
const TOLD = 2;

type UrgentFactsProps = {
  /** the worst first */
  cars: readonly UrgentCar[];
  /** what this browser laid aside, as the server read it */
  painted: string;
  /** its name, or a link of that name */
  nameOf: (car: UrgentCar) => ReactNode;
};

/** One line a car, naming it and the fact; what may be laid aside can be until it changes. */
export function UrgentFacts({ cars, painted, nameOf }: UrgentFactsProps) {
  const [seen, layAside] = useSeen(painted);
  const told = cars.filter(
    (car) => !mayLayAside(car) || !isSeen(seen, { carId: car.carId, key: urgentKey(car) }),
  );
  if (told.length === 0) return null;
  const line = (car: UrgentCar) => (
    <li key={car.carId} className={styles.fact}>
      <p className={styles.words}>
        <StateMark kind="overdue" />
        <span>
          <strong>{nameOf(car)}</strong>: {car.what}.
        </span>
      </p>
      {mayLayAside(car) ? (
        <Button
          look="quiet"
          className={styles.seen}
          aria-label={`Seen: ${car.name}`}
          onClick={() => layAside({ carId: car.carId, key: urgentKey(car) })}
        >
          Seen
        </Button>
      ) : null}
    </li>
  );
  const rest = told.slice(TOLD);
  return (
    <aside aria-label="Urgent" className={styles.urgent}>
      <ul>{told.slice(0, TOLD).map(line)}</ul>
      {rest.length > 0 ? (
        <details className={styles.rest}>
          <summary>And {rest.length === 1 ? 'one more car' : `${rest.length} more cars`}</summary>
          <ul>{rest.map(line)}</ul>
        </details>
      ) : null}
    </aside>
  );
}
