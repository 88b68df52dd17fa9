'use client';

import type { EventPage } from '@quartermark/api/client';
import { eventAnswer } from '@quartermark/engine/display';
import { useEffect } from 'react';
import { Button, Notice } from '../../components/index.ts';
import { spanWords, whenWords } from '../../event/event-words.ts';
import { EventSheet } from '../../event-sheet/EventSheet.tsx';
import { CERTIFIES_NOTHING, stampWords } from '../../event-sheet/sheet-words.ts';
import styles from '../Pocket.module.css';
import { goTo } from '../view-of-address.ts';
import { WaitsLine } from '../WaitsLine.tsx';
import { EventCarPart } from './EventCarPart.tsx';
import { lineTicks } from './own-ticks.ts';
import { useOlder } from './use-older.ts';
import { useOwnTicks } from './use-own-ticks.ts';

export type PocketEventProps = {
  page: EventPage;
  /** what else can be opened */
  others: readonly EventPage[];
  today: string;
  /** by how much the garage's clock is ahead of this phone's, in milliseconds */
  aheadMs: number;
  /** the printed sheet instead of the list */
  paper: boolean;
  onDay: (eventId: string) => void;
  refresh: () => Promise<void>;
};

const MINUTE_MS = 60_000;

/** An event that runs or comes, from what this phone keeps: cars, work to tick, what to take along. */
export function PocketEvent(props: PocketEventProps) {
  const { page, others, today, aheadMs, paper, onDay, refresh } = props;
  const { eventId, event } = page.event;
  const ticking = useOwnTicks({ garageId: page.garage.id, eventId, sheetAt: page.at, aheadMs });
  const older = useOlder(page, aheadMs);
  useEffect(() => {
    // somebody else ticks the same list
    const timer = setInterval(() => void refresh(), MINUTE_MS);
    return () => clearInterval(timer);
  }, [refresh]);
  const ticks = lineTicks(eventId, page.ticks, ticking.own);
  if (paper)
    return (
      <div className={styles.paper}>
        <EventSheet
          page={page}
          today={today}
          ticks={ticks}
          older={older}
          back={<Button onClick={() => goTo('event')}>Back to the event</Button>}
        />
      </div>
    );
  const [first, ...rest] = eventAnswer(event.start, page.cars, { asOf: today });
  return (
    <>
      <WaitsLine />
      <div className={styles.top}>
        <p className={styles.event}>
          {event.name}, {whenWords(event, today)}
        </p>
        <h1>{first}</h1>
        {rest.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        <p className={styles.small}>{[spanWords(event), event.place].filter(Boolean).join(', ')}</p>
        <p className={styles.small}>{stampWords(page)}</p>
        {older ? (
          <p className={styles.event}>
            Older than your last entries: they are not counted here yet.
          </p>
        ) : null}
      </div>
      {ticking.trouble === null ? null : <Notice tone="alarm">{ticking.trouble}</Notice>}
      <p className={styles.back}>
        <Button onClick={() => goTo('paper')}>The inspector’s page</Button>
        <Button onClick={() => goTo('home')}>Back to recording</Button>
      </p>
      {page.cars.map((car) => (
        <EventCarPart
          key={car.carId}
          page={page}
          car={car}
          ticks={ticks}
          onTick={(line, done) => void ticking.tick(line, done)}
        />
      ))}
      <p className={styles.small}>{CERTIFIES_NOTHING}</p>
      {others.length === 0 ? null : (
        <nav aria-label="Other events" className={styles.cars}>
          {others.map(({ event: other }) => (
            <Button
              key={other.eventId}
              className={styles.target}
              onClick={() => onDay(other.eventId)}
            >
              {other.event.name}, {whenWords(other.event, today)}
            </Button>
          ))}
        </nav>
      )}
    </>
  );
}
