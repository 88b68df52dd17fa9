import type { GarageView } from '@quartermark/api/client';
import {
  formatDay,
  formatDistance,
  formatVolume,
  type Lane,
  levelWords,
} from '@quartermark/engine/display';
import { daysAgo } from './days-ago.ts';
import styles from './Readings.module.css';

type ReadingsProps = { lane: Lane; unit: 'km' | 'mi'; garage: GarageView };

/** What was last read on the car: the odometer and the stick, each with its day. No estimate. */
export function Readings({ lane, unit, garage }: ReadingsProps) {
  const { odometer, level, flags } = lane;
  return (
    <dl className={styles.readings}>
      <dt>Odometer</dt>
      <dd>
        {odometer ? (
          <>
            <span className={styles.figure}>{formatDistance(odometer.readingKm, unit)}</span>, on{' '}
            {formatDay(odometer.on)}
          </>
        ) : (
          'not on record'
        )}
      </dd>
      <dt>Oil on the stick</dt>
      <dd>{level ? stickWords(level, garage) : 'not on record'}</dd>
      {flags > 0 ? (
        <>
          <dt>Log</dt>
          <dd>{flags === 1 ? '1 entry needs a look' : `${flags} entries need a look`}</dd>
        </>
      ) : null}
    </dl>
  );
}

function stickWords(level: NonNullable<Lane['level']>, garage: GarageView): string {
  const read = `${levelWords(level)}, read ${daysAgo(level.on, garage.today)}`;
  if (level.changedSince) return `${read}; oil changed since`;
  if (level.addedSinceL > 0)
    return `${read}; ${formatVolume(level.addedSinceL, garage.volumeUnit)} added since`;
  return read;
}
