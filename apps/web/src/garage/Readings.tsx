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

type StickProps = { level: NonNullable<Lane['level']>; garage: GarageView };

/** Common practice, no source: neither too little nor too much is driven on, and a cold stick may mislead. */
function Stick({ level, garage }: StickProps) {
  const words = stickWords(level, garage);
  if (!outsideTheMarks(level)) return words;
  return (
    <>
      <strong>{words}.</strong> Check by the manual’s procedure before the next start.
    </>
  );
}

function outsideTheMarks(level: StickProps['level']): boolean {
  if (level.changedSince) return false;
  const read = levelWords(level);
  const low = read === 'none on the stick' || read === 'below MIN';
  return read === 'over MAX' || (low && level.addedSinceL === 0);
}

function stickWords(level: StickProps['level'], garage: GarageView): string {
  const read = `${levelWords(level)}, read ${daysAgo(level.on, garage.today)}`;
  if (level.changedSince) return `${read}; oil changed since`;
  if (level.addedSinceL > 0)
    return `${read}; ${formatVolume(level.addedSinceL, garage.volumeUnit)} added since`;
  return read;
}
