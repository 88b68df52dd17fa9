'use client';

import type { CarView } from '@quartermark/api/client';
import { useState } from 'react';
import { debriefOf, doorOf } from '../event-day/door-of.ts';
import { NeedList } from '../needs/NeedList.tsx';
import { Evidence } from './Evidence.tsx';
import styles from './RoadAsks.module.css';
import { saidInOf } from './said-in.ts';

/** All that the road asks of the car today, made when somebody opens it; absent for a car that is not in use. */
export function RoadAsks({ view }: { view: CarView }) {
  const [open, setOpen] = useState(false);
  const { garage, carId, road } = view;
  if (road === null) return null;
  const names = Object.fromEntries(view.gear.map(({ gearId, gear }) => [gearId, gear.name]));
  const at = { garageId: garage.id, carId, eventId: null, names };
  return (
    <section aria-label="What the road asks" className={styles.road}>
      <details onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary className={styles.fold}>What the road asks</summary>
        {open ? (
          <>
            <h2 className={styles.title}>For the road, as the log stands today</h2>
            <p className={styles.soft}>
              It certifies nothing: the manual and your own eyes decide.
            </p>
            <NeedList
              needs={road.needs}
              saidIn={saidInOf(view)}
              doorOf={({ id, remedy }) =>
                debriefOf([id], at) ?? (remedy?.record ? doorOf(remedy.record, at) : null)
              }
              evidence={(ids) => <Evidence ids={ids} view={view} />}
            />
          </>
        ) : null}
      </details>
    </section>
  );
}
