'use client';

import type { CarView } from '@quartermark/api/client';
import type { Analysis } from '@quartermark/engine';
import { goOutAgain } from '@quartermark/engine/display';
import type { CarReadiness, SaidIn } from '@quartermark/engine/readiness';
import { useState } from 'react';
import { StateMark } from '../components/index.ts';
import { doorOf } from '../needs/door-of.ts';
import { NeedList } from '../needs/NeedList.tsx';
import { Evidence } from './Evidence.tsx';
import styles from './OnTheRoad.module.css';

/** What a driver asks between two outings, in one line; and all that the road asks, when somebody wants to see it. */
export function OnTheRoad({ view }: { view: CarView }) {
  const { analysis, road } = view;
  if (analysis === null || road === null) return null;
  return <Asked view={view} analysis={analysis} road={road} />;
}

type AskedProps = { view: CarView; analysis: Analysis; road: CarReadiness };

function Asked({ view, analysis, road }: AskedProps) {
  const { garage, carId, car } = view;
  const [open, setOpen] = useState(false);
  const saidIn: SaidIn = { distance: car.unit, volume: garage.volumeUnit };
  const { mark, words } = goOutAgain(road, analysis, saidIn);
  return (
    <section aria-label="On the road" className={styles.road}>
      <div className={styles.again}>
        <StateMark kind={mark} />
        <div>
          <h2 className={styles.question}>May I go out again?</h2> <p>{words}</p>
        </div>
      </div>
      <details onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary className={styles.fold}>What the road asks</summary>
        {open ? (
          <>
            <p className={styles.soft}>
              As the log stands today. It certifies nothing: the manual and your own eyes decide.
            </p>
            <NeedList
              needs={road.needs}
              saidIn={saidIn}
              doorOf={({ remedy }) =>
                doorOf(remedy?.record ?? null, { garageId: garage.id, carId, eventId: null })
              }
              evidence={(ids) => <Evidence ids={ids} view={view} />}
            />
          </>
        ) : null}
      </details>
    </section>
  );
}
