import type { CarView } from '@quartermark/api/client';
import {
  formatDay,
  formatDistance,
  levelFractions,
  likelyLevelSentence,
  nextLookSentence,
  oilUseSentence,
  wheelsWords,
} from '@quartermark/engine/display';
import type { Route } from 'next';
import { Amount, ButtonLink } from '../components/index.ts';
import { Stick } from '../garage/Stick.tsx';
import { oilFactsOf } from '../oil/oil-facts.ts';
import styles from './CarReadings.module.css';
import { LayUps } from './LayUps.tsx';
import { LevelScale } from './LevelScale.tsx';

/** What was last read on the car: the odometer, the stick, with where the oil likely stands; and its lay-ups. */
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
        <dt>Oil</dt>
        <dd>
          <Oil view={view} />
          <ButtonLink href={`/g/${view.garage.id}/car/${view.carId}/oil` as Route} look="quiet">
            Oil level and use
          </ButtonLink>
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

function Oil({ view }: { view: CarView }) {
  const { analysis, garage } = view;
  if (!analysis) return null;
  const { oil, lastLevel: level } = analysis;
  const facts = oilFactsOf(view);
  const use = oilUseSentence(oil, facts);
  const likely = oil.status === 'none' ? null : levelFractions(oil);
  return (
    <div className={styles.level}>
      <LevelScale
        fraction={level?.fraction ?? null}
        mark={level?.mark ?? null}
        old={level?.changedSince ?? false}
        likely={likely}
      />
      <div>
        <p>{likelyLevelSentence(oil, facts)}</p>
        {use === null ? null : <p>{use}</p>}
        <p>{nextLookSentence(oil, facts)}</p>
        <p className={styles.soft}>
          {level ? (
            <>
              Last on the stick: <Stick level={level} garage={garage} />.
            </>
          ) : (
            'No reading on record. Look at the stick by the manual’s procedure.'
          )}
        </p>
        {level?.offProcedure ? (
          <p className={styles.soft}>
            Read otherwise than this car’s procedure says; it may show falsely.
          </p>
        ) : null}
      </div>
    </div>
  );
}
