import { formatDay } from '@quartermark/engine/display';
import type { Route } from 'next';
import Link from 'next/link';
import type { CSSProperties } from 'react';
import styles from './Board.module.css';
import { placeMonths } from './place.ts';
import type { Season } from './season.ts';

type SeasonHeadProps = { season: Season; garageId: string };

/** What stands above the lanes: months from today on, and each event over its line. */
export function SeasonHead({ season: { axis, events, rows }, garageId }: SeasonHeadProps) {
  return (
    <div className={styles.head} style={{ '--rows': rows } as CSSProperties}>
      <div className={styles.scale}>
        {events.map(({ eventId, event, from, row }) => (
          <Link
            key={eventId}
            href={`/g/${garageId}/events/${eventId}` as Route}
            prefetch={false}
            className={styles.event}
            style={{ '--at': from, '--row': row } as CSSProperties}
          >
            <span>
              {event.name} <small>{shortDay(event.start)}</small>
            </span>
          </Link>
        ))}
        <span className={styles.month} style={{ '--at': 0 } as CSSProperties}>
          Today
        </span>
        {placeMonths(axis)
          .filter(({ at }) => at > NEXT_TO_TODAY)
          .map(({ name, at }) => (
            <span key={name} className={styles.month} style={{ '--at': at } as CSSProperties}>
              {name}
            </span>
          ))}
      </div>
      <span className={styles.later}>later</span>
    </div>
  );
}

/** A month that begins in the next days has no room for its name beside "Today"; its line stays. */
const NEXT_TO_TODAY = 0.07;

/** @example shortDay('2026-06-20') // "20 June" */
function shortDay(day: string): string {
  return formatDay(day).replace(/ \d+$/, '');
}
