import type { EventList } from '@quartermark/api/client';
import { weekdayAhead } from '@quartermark/engine/display';
import type { Route } from 'next';
import Link from 'next/link';
import { splitEvents } from '../event/event-words.ts';

type NextEventLineProps = { calendar: EventList; className?: string | undefined };

/** Leads to what is on or comes next on the calendar; absent where nothing does. */
export function NextEventLine({ calendar: { events, garage }, className }: NextEventLineProps) {
  const [next] = splitEvents(events, garage.today).coming;
  if (!next) return null;
  const { name, start } = next.event;
  return (
    <p>
      <Link href={`/g/${garage.id}/events/${next.eventId}` as Route} className={className}>
        Next: {name} on {weekdayAhead(start, { asOf: garage.today })}
      </Link>
    </p>
  );
}
