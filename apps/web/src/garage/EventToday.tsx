import type { EventList, EventView, OverviewRow } from '@quartermark/api/client';
import type { Route } from 'next';
import Link from 'next/link';
import { eventsAnswer } from '../event/event-words.ts';
import styles from './GarageScreen.module.css';

type EventTodayProps = {
  on: EventView;
  garage: EventList['garage'];
  /** the car this browser recorded for last; null where it never did */
  lastCarId: string | null;
  rows: readonly OverviewRow[];
};

/** On an event day the garage leads there first, and to the car that was last recorded for. */
export function EventToday({ on, garage, lastCarId, rows }: EventTodayProps) {
  const { eventId, event } = on;
  const goes = event.cars.length === 0 || (lastCarId !== null && event.cars.includes(lastCarId));
  const last = goes ? rows.find(({ carId }) => carId === lastCarId) : undefined;
  const there = `/g/${garage.id}/events/${eventId}`;
  return (
    <p className={styles.today}>
      <Link href={(last ? `${there}?car=${last.carId}` : there) as Route} className={styles.way}>
        {eventsAnswer([on], garage.today)}
      </Link>
      {last ? (
        <Link
          href={`/g/${garage.id}/record/${last.carId}` as Route}
          prefetch={false}
          className={styles.way}
        >
          What happened to {last.name}?
        </Link>
      ) : null}
    </p>
  );
}
