'use client';

import type { EventPage } from '@quartermark/api/client';
import { Button } from '../../components/index.ts';
import { whenWords } from '../../event/event-words.ts';
import styles from '../Pocket.module.css';
import { goTo } from '../view-of-address.ts';

type EventDoorProps = { page: EventPage; today: string };

/** The way to the event that runs today or comes next. */
export function EventDoor({ page: { event }, today }: EventDoorProps) {
  return (
    <Button className={styles.target} onClick={() => goTo('event')}>
      {event.event.name}, {whenWords(event.event, today)}: cars and work
    </Button>
  );
}
