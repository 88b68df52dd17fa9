import type { EventPage, TakeAlong as Take } from '@quartermark/api/client';
import { capital, fuelTaken, oilTaken, takenTogether } from '@quartermark/engine/display';
import { Evidence } from '../car/Evidence.tsx';
import { Why } from '../components/index.ts';
import styles from './TakeAlong.module.css';
import { usualKit } from './usual-kit.ts';

/** What to pack: oil and fuel for all cars together, then car by car with its reason, then the usual tools. */
export function TakeAlong({ page }: { page: EventPage }) {
  const { garage, event } = page;
  const cars = page.cars.flatMap(({ take, ...car }) => (take ? [{ ...car, take }] : []));
  const sums = takenTogether(
    cars.map(({ name, take }) => ({ name, ...take })),
    garage.volumeUnit,
  );
  return (
    <section id="take" aria-label="What to take along" className={styles.section}>
      <h2>What to take along</h2>
      {cars.length > 1 ? (
        <div className={styles.part}>
          <h3>For all cars together</h3>
          <ul className={styles.list}>
            {sums.map((sum) => (
              <li key={sum}>{sum}</li>
            ))}
          </ul>
        </div>
      ) : null}
      {cars.map(({ carId, name, items, take }) => (
        <div key={carId} className={styles.part}>
          <h3>{name}</h3>
          <p>{oilWords(take.oil, garage.volumeUnit)}.</p>
          <p>{capital(fuelTaken(take.fuel, garage.volumeUnit))}.</p>
          <Why of={`what to take along for ${name}`}>
            <Reasons take={take} view={{ garage, items, analysis: null }} />
          </Why>
        </div>
      ))}
      <div className={styles.part}>
        <h3>Usually packed too</h3>
        <p className={styles.soft}>Common practice, no source; the organiser’s list decides.</p>
        <ul className={styles.list}>
          {usualKit(event.event.sort).map((thing) => (
            <li key={thing}>{thing}</li>
          ))}
        </ul>
      </div>
    </section>
  );
}

/** @example oilWords(oil, 'l') // "Oil 10W-60: likely 0.6 L, seldom more than 0.9 L" */
function oilWords(oil: Take['oil'], unit: EventPage['garage']['volumeUnit']): string {
  const words = oilTaken(oil, unit);
  return oil.grade === null && oil.approval === null ? capital(words) : `Oil ${words}`;
}

type ReasonsProps = { take: Take; view: Parameters<typeof Evidence>[0]['view'] };

function Reasons({ take: { oil, fuel }, view }: ReasonsProps) {
  const ids = [...new Set([...oil.evidence, ...fuel.evidence])];
  return (
    <>
      <p>{oil.reason}</p>
      <p>{fuel.reason}</p>
      {ids.length > 0 ? <Evidence ids={ids} view={view} /> : null}
    </>
  );
}
