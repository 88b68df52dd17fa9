import type { EventPage } from '@quartermark/api/client';
import type { Route } from 'next';
import { EntryRow } from '../car/EntryRow.tsx';
import { ButtonLink, PageAnswer } from '../components/index.ts';
import { spanWords, whenWords } from '../event/event-words.ts';
import styles from './EventDayScreen.module.css';

/** An event that is over: what is on record of it, car by car. */
export function EventIsOver({ page }: { page: EventPage }) {
  const { garage, event, cars } = page;
  const here = `/g/${garage.id}/events/${event.eventId}`;
  const open = cars.filter(({ recorded }) => recorded.length === 0).map(({ name }) => name);
  return (
    <>
      <PageAnswer
        about={`${event.event.name}, ${spanWords(event.event)}`}
        beneath={
          open.length > 0 && open.length < cars.length ? (
            <p>Not on record: {open.join(', ')}.</p>
          ) : null
        }
      >
        It is over, {whenWords(event.event, garage.today)}.{' '}
        {recordedWords(cars.length, open.length)}
      </PageAnswer>
      <nav aria-label="This event" className={styles.ways}>
        {cars.length > 0 ? (
          <ButtonLink href={`${here}/debrief` as Route} look="quiet">
            How it went
          </ButtonLink>
        ) : null}
        <ButtonLink href={`${here}/change` as Route} look="quiet">
          Change the event
        </ButtonLink>
      </nav>
      {cars.map((car) => (
        <section key={car.carId} aria-label={car.name} className={styles.section}>
          <h2>{car.name}</h2>
          {car.recorded.length === 0 ? (
            <p>Nothing that it did there is on record.</p>
          ) : (
            <ul className={styles.list}>
              {car.recorded.map((entry) => (
                <EntryRow
                  key={entry.entry.id}
                  entry={entry}
                  view={{ garage, items: car.items, analysis: null }}
                  brief
                />
              ))}
            </ul>
          )}
        </section>
      ))}
    </>
  );
}

function recordedWords(cars: number, open: number): string {
  if (cars === 0) return 'No car was named for it.';
  if (open === 0) return 'What the cars did there is on record.';
  return open === cars
    ? 'Nothing of it is on record yet.'
    : `Of ${cars - open} of ${cars} cars it is on record.`;
}
