import type { OverviewRow } from '@quartermark/api/client';
import { type Lane, type LaneItem, laneItemWords } from '@quartermark/engine/display';
import type { CSSProperties } from 'react';
import { StateMark } from '../components/index.ts';
import styles from './Board.module.css';
import { dueBefore, leftOut, type Place, placeItem } from './place.ts';
import type { Season } from './season.ts';

type LaneItemsProps = { row: OverviewRow; lane: Lane; season: Season };

/**
 * What runs out first on a car, a line each. Where there is room for the board each stands at its date;
 * what has none is said in words. On a phone they are a list.
 */
export function LaneItems({ row, lane, season }: LaneItemsProps) {
  const more = leftOut({ ...row, lane });
  if (lane.next.length === 0) return <p className={styles.none}>Nothing is watched yet.</p>;
  return (
    <ol className={styles.items}>
      {lane.next.map((item) => (
        <Line key={item.id} item={item} row={row} lane={lane} season={season} />
      ))}
      {more > 0 ? (
        <li className={styles.more}>
          and {more} more {more === 1 ? 'that asks' : 'that ask'} for something
        </li>
      ) : null}
    </ol>
  );
}

function Line({ item, row, lane, season }: LaneItemsProps & { item: LaneItem }) {
  const { mark, word, detail } = laneItemWords(item, row);
  const place = placeItem(item, lane.laidUp, season.axis);
  const event = dueBefore(row.carId, place, season.events);
  return (
    <li
      className={styles.item}
      data-where={place.where}
      data-turned={isTurned(place) || undefined}
      style={{ '--at': shareOf(place) } as CSSProperties}
    >
      <StateMark kind={mark} />
      <span className={styles.words}>
        {item.name}: <strong>{word}</strong>
        {detail ? <span className={styles.detail}>, {detail}</span> : null}
        {event ? <span className={styles.before}>, before {event.event.name}</span> : null}
      </span>
    </li>
  );
}

/** From here on words stand to the left of their mark. */
const TURN = 0.5;

const shareOf = (place: Place): number => (place.where === 'axis' ? place.at : 0);

function isTurned(place: Place): boolean {
  return place.where === 'later' || shareOf(place) > TURN;
}
