'use client';

import type { EventPage } from '@quartermark/api/client';
import { eventAnswer, weekdayAhead } from '@quartermark/engine/display';
import type { EventInput } from '@quartermark/engine/log';
import { useSuspenseQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import { useTRPC } from '../client/trpc.ts';
import { ButtonLink, EmptyState, PageAnswer } from '../components/index.ts';
import { EVENT_NAME, lastDay, whenWords } from '../event/event-words.ts';
import { CarsByNeeds } from './CarsByNeeds.tsx';
import styles from './EventDayScreen.module.css';
import { EventIsOver } from './EventIsOver.tsx';
import { EventWork } from './EventWork.tsx';
import { TakeAlong } from './TakeAlong.tsx';

type EventDayScreenProps = {
  garageId: string;
  eventId: string;
  /** the car that is shown first where they are shown one at a time */
  carId: string | null;
};

/** One event: which cars can go, what is asked of each, the work before it, and what to take along. */
export function EventDayScreen({ garageId, eventId, carId }: EventDayScreenProps) {
  const trpc = useTRPC();
  const { data: page } = useSuspenseQuery(trpc.event.view.queryOptions({ garageId, eventId }));
  const { event } = page.event;
  if (lastDay(event) < page.garage.today) return <EventIsOver page={page} />;
  const [first, ...rest] = eventAnswer(event.start, page.cars, { asOf: page.garage.today });
  return (
    <>
      <PageAnswer
        about={aboutWords(page)}
        beneath={
          rest.length > 0 ? (
            <ul className={styles.rest}>
              {rest.map((sentence) => (
                <li key={sentence}>{sentence}</li>
              ))}
            </ul>
          ) : null
        }
      >
        {first}
      </PageAnswer>
      <EventWays page={page} />
      {page.cars.length === 0 ? (
        <NoCarNamed page={page} />
      ) : (
        <>
          <CarsByNeeds page={page} first={carId} />
          <EventWork page={page} />
          <TakeAlong page={page} />
        </>
      )}
      <p className={styles.careful}>
        By the log of this garage alone. The maker’s manual, the organiser and a look at the car
        decide.
      </p>
    </>
  );
}

function aboutWords({ event: { event }, garage }: EventPage): string {
  const place = event.place === undefined ? '' : `, ${event.place}`;
  return `${event.name}, ${daysWords(event)}, ${whenWords(event, garage.today)}${place}`;
}

/** @example daysWords({ start: '2026-07-24', end: '2026-07-27' }) // "Fri 24 July to Mon 27 July 2026" */
function daysWords(event: EventPage['event']['event']): string {
  const last = lastDay(event);
  const to = weekdayAhead(last, { asOf: null });
  return event.start === last ? to : `${weekdayAhead(event.start, { asOf: last })} to ${to}`;
}

/** Where a car is driven at its limits: the air decides over its power, and tyres over its grip. */
const AIR_MATTERS: readonly EventInput['sort'][] = ['circuit', 'dragStrip', 'autocross'];

function EventWays({ page: { garage, event, cars } }: { page: EventPage }) {
  const began = event.event.start <= garage.today;
  const here = `/g/${garage.id}/events/${event.eventId}`;
  return (
    <nav aria-label="This event" className={styles.ways}>
      {cars.length > 0 ? (
        <>
          <a href="#work">The work</a>
          <a href="#take">What to take along</a>
          <ButtonLink href={`${here}/sheet` as Route} look="quiet">
            Sheet for the inspector
          </ButtonLink>
          {AIR_MATTERS.includes(event.event.sort) ? (
            <ButtonLink href={`/g/${garage.id}/air` as Route} look="quiet">
              Air and pressures
            </ButtonLink>
          ) : null}
          {began ? (
            <ButtonLink href={`${here}/debrief` as Route} look="quiet">
              How it went
            </ButtonLink>
          ) : null}
        </>
      ) : null}
      <ButtonLink href={`${here}/change` as Route} look="quiet">
        Change the event
      </ButtonLink>
    </nav>
  );
}

function NoCarNamed({ page: { garage, event } }: { page: EventPage }) {
  return (
    <EmptyState
      title="Say which cars go"
      actions={
        <ButtonLink href={`/g/${garage.id}/events/${event.eventId}/change` as Route} look="main">
          Change the event
        </ButtonLink>
      }
    >
      <p>
        {EVENT_NAME[event.event.sort]}: once a car is named, this page says what is asked of it,
        what is to be done before, by when and with which parts, and what to take along.
      </p>
    </EmptyState>
  );
}
