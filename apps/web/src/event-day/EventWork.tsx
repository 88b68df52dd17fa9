import type { EventPage } from '@quartermark/api/client';
import { Cautions } from '../record/Cautions.tsx';
import styles from './EventWork.module.css';
import { lastTicks } from './last-ticks.ts';
import { ToOrder } from './ToOrder.tsx';
import { WorkLineRow } from './WorkLineRow.tsx';
import { workCautions } from './work-cautions.ts';

/** What is to be done before the event: what to order first, then the work, car by car, in its order. */
export function EventWork({ page }: { page: EventPage }) {
  const { work, cars, ticks } = page;
  const last = lastTicks(ticks);
  return (
    <section id="work" aria-label="The work" className={styles.section}>
      <h2>The work</h2>
      {work.length === 0 ? <p>Nothing that is known of has to be done before it.</p> : null}
      <ToOrder page={page} />
      {work.length > 0 ? (
        <p className={styles.soft}>
          A tick is a note for whoever works here, not a record: the need stays until it is
          recorded.
        </p>
      ) : null}
      {cars.map((car) => {
        const lines = work.filter((line) => line.car === car.carId);
        if (lines.length === 0) return null;
        return (
          <section key={car.carId} aria-label={`The work: ${car.name}`} className={styles.car}>
            <h3>{car.name}</h3>
            <Cautions of={workCautions(lines, car)} />
            <ol className={styles.list}>
              {lines.map((line) => (
                <WorkLineRow
                  key={line.id}
                  line={line}
                  carName={car.name}
                  tick={last.get(line.id) ?? null}
                  page={page}
                />
              ))}
            </ol>
          </section>
        );
      })}
    </section>
  );
}
