import type { CarView } from '@quartermark/api/client';
import { formatDay, formatDistance, wheelsWords } from '@quartermark/engine/display';
import type { Route } from 'next';
import { Amount, ButtonLink } from '../components/index.ts';
import { Stick } from '../garage/Stick.tsx';
import styles from './CarReadings.module.css';
import { LayUps } from './LayUps.tsx';
import { LevelScale } from './LevelScale.tsx';

/** What was last read on the car: the odometer, the stick; and when it was or is laid up. */
export function CarReadings({ view }: { view: CarView }) {
  return (
    <section aria-label="Readings" className={styles.readings}>
      <div className={styles.head}>
        <h2>Last readings</h2>
        <ButtonLink href={`/g/${view.garage.id}/car/${view.carId}/change` as Route} look="quiet">
          Change the car
        </ButtonLink>
      </div>
      <dl className={styles.list}>
        <dt>Odometer</dt>
        <dd>
          <Odometer view={view} />
        </dd>
        <dt>Oil on the stick</dt>
        <dd>
          <Level view={view} />
        </dd>
        <Wheels view={view} />
        <dt>Lay-ups</dt>
        <dd>
          <LayUps view={view} />
        </dd>
      </dl>
    </section>
  );
}

/** That the wheels were checked again; before that they stand in the way, and it is told there. */
function Wheels({ view: { analysis, car } }: { view: CarView }) {
  const wheels = analysis?.matters.wheels;
  if (wheels?.state !== 'rechecked') return null;
  return (
    <>
      <dt>Wheels</dt>
      <dd>{wheelsWords(wheels, car.unit)}.</dd>
    </>
  );
}

function Odometer({ view: { analysis, car } }: { view: CarView }) {
  const read = analysis?.odometer;
  if (!read) return <p>Not on record. Record what it shows now.</p>;
  const [figure = '', unit = ''] = formatDistance(read.readingKm, car.unit).split(' ');
  return (
    <p>
      <Amount figure={figure} unit={unit} size="large" />, on {formatDay(read.on)}
    </p>
  );
}

function Level({ view: { analysis, garage } }: { view: CarView }) {
  const level = analysis?.lastLevel;
  if (!level) return <p>Not on record. Look at the stick by the manual’s procedure.</p>;
  return (
    <div className={styles.level}>
      <LevelScale fraction={level.fraction} mark={level.mark} old={level.changedSince} />
      <div>
        <p>
          <Stick level={level} garage={garage} />
        </p>
        <p className={styles.soft}>
          Read on {formatDay(level.on)}. A reading, not an estimate of today’s level.
        </p>
        {level.offProcedure ? (
          <p className={styles.soft}>
            Read otherwise than this car’s procedure says; it may show falsely.
          </p>
        ) : null}
      </div>
    </div>
  );
}
