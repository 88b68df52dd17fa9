'use client';

import type { EventView } from '@quartermark/api/client';
import { useSuspenseQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import Link from 'next/link';
import { useTRPC } from '../client/trpc.ts';
import { ButtonLink, EmptyState, PageAnswer } from '../components/index.ts';
import { CarOutlooks } from './CarOutlooks.tsx';
import styles from './EventsScreen.module.css';
import { carsWords } from './event-fields.ts';
import {
  EVENT_NAME,
  eventsAnswer,
  lastDay,
  spanWords,
  splitEvents,
  whenWords,
} from './event-words.ts';
import { PlannedLayUps } from './PlannedLayUps.tsx';
import { countedWords } from './planned-use-words.ts';
import { toldEvents } from './told-events.ts';
import { Unrecorded } from './Unrecorded.tsx';

/** The garage's calendar: what comes, by its day, and what was lately. */
export function EventsScreen({ garageId }: { garageId: string }) {
  const trpc = useTRPC();
  const { data } = useSuspenseQuery(trpc.event.list.queryOptions({ garageId }));
  const { today } = data.garage;
  const { coming, past } = splitEvents(data.events, today);
  const list = { garageId, today, names: data.cars };
  const told = toldEvents(data);
  return (
    <>
      <PageAnswer
        about="Events"
        action={
          <ButtonLink href={`/g/${garageId}/events/add` as Route} look="main">
            Add an event
          </ButtonLink>
        }
      >
        {eventsAnswer(data.events, today)}
      </PageAnswer>
      {data.events.length === 0 ? (
        <EmptyState title="Write down where you want to go">
          <p>
            A circuit day, a trip, a drag-strip evening: once it is on the calendar, the garage
            shows which cars have something due before it.
          </p>
        </EmptyState>
      ) : null}
      <Unrecorded garageId={garageId} />
      <EventList title="What comes" events={coming} told={told} {...list} />
      <PlannedLayUps plans={data.plannedLayUps} {...list} />
      <EventList title="The last 30 days" events={past} {...list} />
    </>
  );
}

type ListProps = { garageId: string; today: string; names: Readonly<Record<string, string>> };

type EventListProps = ListProps & {
  title: string;
  events: readonly EventView[];
  /** of which it is told what runs out */
  told?: ReturnType<typeof toldEvents>;
};

function EventList({ title, events, told, ...list }: EventListProps) {
  if (events.length === 0) return null;
  return (
    <section aria-label={title} className={styles.section}>
      <h2>{title}</h2>
      <ul className={styles.list}>
        {events.map((one) => (
          <EventLine
            key={one.eventId}
            one={one}
            told={told?.eventIds.includes(one.eventId) ? told.unasked : null}
            {...list}
          />
        ))}
      </ul>
    </section>
  );
}

type EventLineProps = ListProps & {
  one: EventView;
  /** cars of which it is told unasked what runs out; null: of none */
  told: readonly string[] | null;
};

function EventLine({ one, told, garageId, today, names }: EventLineProps) {
  const { eventId, event } = one;
  const carName = (id: string) => names[id] ?? 'a car that has left';
  return (
    <li className={styles.row}>
      <p className={styles.days}>
        {spanWords(event)}
        <span className={styles.when}>{whenWords(event, today)}</span>
      </p>
      <div>
        <h3>
          <Link
            href={`/g/${garageId}/events/${eventId}` as Route}
            prefetch={false}
            className={styles.link}
          >
            {event.name}
          </Link>
          <span className={styles.sort}>{EVENT_NAME[event.sort]}</span>
        </h3>
        {event.place ? <p>{event.place}</p> : null}
        <p className={styles.cars}>Cars: {carsWords(event.cars, carName)}</p>
        {lastDay(event) >= today ? <p className={styles.cars}>{countedWords(event)}</p> : null}
        {told ? <CarOutlooks garageId={garageId} event={one} names={names} unasked={told} /> : null}
      </div>
    </li>
  );
}
