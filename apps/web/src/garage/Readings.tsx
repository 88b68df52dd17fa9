import type { GarageView } from '@quartermark/api/client';
import {
  formatDay,
  formatDistance,
  type Lane,
  laneLevelWords,
  OIL_STOP_WORDS,
} from '@quartermark/engine/display';
import { daysAgo } from './days-ago.ts';
import styles from './Readings.module.css';
import { Stick } from './Stick.tsx';

type ReadingsProps = { lane: Lane; unit: 'km' | 'mi'; garage: GarageView };

/** The odometer as it was last read, and the oil: where it likely is, else as it was last read. */
export function Readings({ lane, unit, garage }: ReadingsProps) {
  const { odometer, flags } = lane;
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
      <dt>Oil</dt>
      <dd>
        <Oil lane={lane} garage={garage} />
      </dd>
      {flags > 0 ? (
        <>
          <dt>Log</dt>
          <dd>{flags === 1 ? '1 entry needs a look' : `${flags} entries need a look`}</dd>
        </>
      ) : null}
    </dl>
  );
}

type OilProps = { lane: Lane; garage: GarageView };

/** What cannot wait, then the likely level with its last look; without one the reading as it was read. */
function Oil({ lane: { oil, level }, garage }: OilProps) {
  const stop = oil?.stop ?? null;
  const urgent = stop === null ? null : <strong>{OIL_STOP_WORDS[stop]}. </strong>;
  if (!oil?.level)
    return (
      <>
        {urgent}
        {level ? <Stick level={level} garage={garage} /> : 'not on record'}
      </>
    );
  return (
    <>
      {urgent}
      {laneLevelWords(oil.level)}
      {oil.rough ? ', roughly' : ''}
      {level ? `; read ${daysAgo(level.on, garage.today)}` : ''}
    </>
  );
}
