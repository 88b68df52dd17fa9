'use client';

import type { EventPage } from '@quartermark/api/client';
import { useState } from 'react';
import { PocketEvent, type PocketEventProps } from './PocketEvent.tsx';

type PocketEventsProps = Omit<PocketEventProps, 'page' | 'others' | 'onDay'> & {
  /** those that can be opened: what runs today first, then by their first day */
  days: readonly [EventPage, ...EventPage[]];
};

/** The event that runs or comes next, or another that was asked for. */
export function PocketEvents({ days, ...rest }: PocketEventsProps) {
  const [asked, setAsked] = useState<string | null>(null);
  const page = days.find(({ event }) => event.eventId === asked) ?? days[0];
  return (
    <PocketEvent
      key={page.event.eventId}
      page={page}
      others={days.filter((one) => one !== page)}
      onDay={setAsked}
      {...rest}
    />
  );
}
