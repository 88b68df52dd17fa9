import type { OverviewRow } from '@quartermark/api/client';
import { earlyWords, type Lane, type LaneItem, laneItemWords } from '@quartermark/engine/display';
import type { CSSProperties } from 'react';
import { StateMark } from '../components/index.ts';
import styles from './Board.module.css';
import { dueBefore, type Place, placeItem, placeWhisker } from './place.ts';
import type { Season } from './season.ts';

type LaneLineProps = { item: LaneItem; row: OverviewRow; lane: Lane; season: Season };

/** One item in its lane: the mark on its likely day, a whisker back to the day it could be as early as. */
export function LaneLine({ item, row, lane, season }: LaneLineProps) {
  const { mark, word, detail } = laneItemWords(item, row);
  const place = placeItem(item, lane.laidUp, season.axis);
  const event = dueBefore(row.carId, place, season.events);
  const whisker = placeWhisker(item, lane.laidUp, season.axis);
  return (
    <li
      className={styles.item}
      data-where={place.where}
      data-turned={isTurned(place) || undefined}
      data-whisker={whisker !== null || undefined}
      style={{ '--at': shareOf(place) } as CSSProperties}
    >
      {whisker ? <Whisker {...whisker} /> : null}
      <StateMark kind={mark} />
      <span className={styles.words}>
        {item.name}: <strong>{word}</strong>
        {detail ? <span className={styles.detail}>, {detail}</span> : null}
        {whisker && item.early && !detail.includes('could be') ? (
          <span className={styles.seen}>, {earlyWords(item.early, row)}</span>
        ) : null}
        {event ? <span className={styles.before}>, before {event.event.name}</span> : null}
      </span>
    </li>
  );
}

type WhiskerProps = { from: number; to: number };

function Whisker({ from, to }: WhiskerProps) {
  return (
    <span
      aria-hidden="true"
      className={styles.whisker}
      style={{ '--from': from, '--wide': to - from } as CSSProperties}
    />
  );
}

/** From here on words stand to the left of their mark. */
const TURN = 0.5;

const shareOf = (place: Place): number => (place.where === 'axis' ? place.at : 0);

function isTurned(place: Place): boolean {
  return place.where === 'later' || shareOf(place) > TURN;
}
