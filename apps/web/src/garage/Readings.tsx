import type { GarageView } from '@quartermark/api/client';
import { formatDay, formatDistance, type Lane } from '@quartermark/engine/display';
import styles from './Readings.module.css';
import { Stick } from './Stick.tsx';

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
      <dd>{level ? <Stick level={level} garage={garage} /> : 'not on record'}</dd>
      {flags > 0 ? (
        <>
          <dt>Log</dt>
          <dd>{flags === 1 ? '1 entry needs a look' : `${flags} entries need a look`}</dd>
        </>
      ) : null}
    </dl>
  );
}
