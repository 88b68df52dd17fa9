import type { CarView } from '@quartermark/api/client';
import { GearLine } from '../gear/GearLine.tsx';
import styles from './Fitted.module.css';

/** The sets and parts that are on the car now, each leading to its own page. Absent while none is. */
export function Fitted({ view }: { view: CarView }) {
  if (view.gear.length === 0) return null;
  return (
    <section aria-label="Fitted now" className={styles.fitted}>
      <h2>Fitted now</h2>
      <ul className={styles.list}>
        {view.gear.map((row) => (
          <GearLine key={row.gearId} row={row} garageId={view.garage.id} unit={view.car.unit} />
        ))}
      </ul>
    </section>
  );
}
