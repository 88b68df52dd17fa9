'use client';

import type { EventPage } from '@quartermark/api/client';
import { useState } from 'react';
import { Choice, joinClasses } from '../components/index.ts';
import styles from './CarsByNeeds.module.css';
import { NeedTable } from './NeedTable.tsx';
import { OneCar } from './OneCar.tsx';
import { isRead } from './of-page.ts';

/** So many columns can be read beside each other; more cars are first shown one at a time. */
const COLUMNS_READ = 5;

const WAYS = [
  { value: 'table', words: 'All in a table' },
  { value: 'one', words: 'A car at a time' },
] as const;
type Way = (typeof WAYS)[number]['value'];

type CarsByNeedsProps = { page: EventPage; first: string | null };

/** What is asked of each car: side by side where there is room for it, else a car at a time. */
export function CarsByNeeds({ page, first }: CarsByNeedsProps) {
  const cars = page.cars.filter(isRead);
  const [way, setWay] = useState<Way>(page.cars.length > COLUMNS_READ ? 'one' : 'table');
  return (
    <section aria-label="Cars by needs" className={styles.section}>
      <h2>What is asked, car by car</h2>
      {page.cars.length > 1 ? (
        <div className={styles.choice}>
          <Choice
            label="Show"
            size="small"
            options={[...WAYS]}
            value={way}
            onChange={(chosen: Way) => setWay(chosen)}
          />
        </div>
      ) : null}
      {way === 'table' ? (
        <div className={styles.table}>
          <NeedTable page={page} cars={cars} />
        </div>
      ) : null}
      <div className={joinClasses(way === 'table' && styles.phoneOnly)}>
        <OneCar page={page} first={first} />
      </div>
    </section>
  );
}
