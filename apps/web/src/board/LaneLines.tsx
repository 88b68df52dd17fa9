import type { Lane } from '@quartermark/engine/display';
import type { CSSProperties } from 'react';
import { joinClasses } from '../components/index.ts';
import styles from './Board.module.css';
import { mayGo, placeMonths, placeSpan } from './place.ts';
import { plansOf, type Season } from './season.ts';

type LaneLinesProps = { season: Season; carId: string; laidUp: Lane['laidUp'] };

/** What lies behind a lane: today, the months, the events, and the days the car is or is to be laid up. */
export function LaneLines({ season, carId, laidUp }: LaneLinesProps) {
  const { axis, events } = season;
  const band = laidUp && placeSpan({ from: laidUp.since, to: laidUp.until }, axis);
  return (
    <div aria-hidden="true" className={styles.lines}>
      {band ? <Stretch className={styles.laidUp} {...band} /> : null}
      {plansOf(season, carId).map(({ layUpId, from, to }) => (
        <Stretch
          key={layUpId}
          className={styles.planned}
          from={from}
          to={to}
          words="Planned lay-up"
        />
      ))}
      {placeMonths(axis).map(({ name, at }) => (
        <Stretch key={name} className={styles.monthLine} from={at} to={at} />
      ))}
      {events.map((one) => (
        <Stretch
          key={one.eventId}
          className={joinClasses(styles.eventLine, mayGo(one, carId) ? styles.goes : styles.stays)}
          from={one.from}
          to={one.event.end === undefined ? one.from : one.to}
        />
      ))}
      <Stretch className={styles.todayLine} from={0} to={0} />
    </div>
  );
}

type StretchProps = { className: string | undefined; from: number; to: number; words?: string };

function Stretch({ className, from, to, words }: StretchProps) {
  return (
    <span className={className} style={{ '--at': from, '--wide': to - from } as CSSProperties}>
      {words}
    </span>
  );
}
