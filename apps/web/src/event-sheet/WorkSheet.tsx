import type { EventCar, EventPage } from '@quartermark/api/client';
import { fuelTaken, oilTaken, readyWords, workDays, workParts } from '@quartermark/engine/display';
import type { WorkLine } from '@quartermark/engine/readiness';
import { StateWord } from '../components/index.ts';
import styles from './EventSheet.module.css';
import { SheetPage } from './SheetPage.tsx';

/** `by` null: ticked on this phone. */
export type SheetTick = { done: boolean; by: string | null };
type Ticks = ReadonlyMap<string, SheetTick>;

type WorkSheetProps = { page: EventPage; ticks: Ticks; older: boolean };

/** The event's own page: cars with their verdicts, the work with boxes to tick by hand, what to take along. */
export function WorkSheet({ page, ticks, older }: WorkSheetProps) {
  const { cars } = page;
  return (
    <SheetPage page={page} title={`${page.event.event.name}: work`} older={older}>
      {cars.length === 0 ? <p>No car is named for this event.</p> : null}
      {cars.map((car) => (
        <CarWork key={car.carId} page={page} car={car} ticks={ticks} />
      ))}
      <TakeAlong page={page} />
    </SheetPage>
  );
}

function CarWork({ page, car, ticks }: { page: EventPage; car: EventCar; ticks: Ticks }) {
  const lines = page.work.filter((line) => line.car === car.carId);
  const verdict = car.readiness && readyWords(car.readiness.verdict, { asOf: page.garage.today });
  return (
    <section>
      <h3>
        {car.name}
        {verdict === null ? null : (
          <span className={styles.beside}>
            <StateWord kind={verdict.mark} words={verdict.word} />
          </span>
        )}
      </h3>
      {verdict === null ? (
        <p>A part of its log cannot be read, so nobody can say what is to be done.</p>
      ) : lines.length === 0 ? (
        <p>Nothing is to be done before it, by the log.</p>
      ) : (
        <ul className={styles.work}>
          {lines.map((line) => (
            <WorkRow key={line.id} page={page} line={line} tick={ticks.get(line.id)} />
          ))}
        </ul>
      )}
    </section>
  );
}

type WorkRowProps = { page: EventPage; line: WorkLine; tick: SheetTick | undefined };

function WorkRow({ page, line, tick }: WorkRowProps) {
  const spoken = { asOf: page.garage.today };
  const done = tick?.done ? tick : null;
  const words = [
    line.blocking ? null : 'advice',
    workDays(line, spoken),
    workParts(line, spoken),
    done && `ticked ${done.by === null ? 'on this phone' : `by ${done.by}`}`,
  ].filter((part) => part !== null);
  return (
    <li>
      <span className={styles.box} aria-hidden="true">
        {done === null ? '' : '✓'}
      </span>
      <span>
        {line.what} <span className={styles.days}>({words.join('; ')})</span>
      </span>
    </li>
  );
}

function TakeAlong({ page }: { page: EventPage }) {
  const { cars, garage } = page;
  const known = cars.filter(({ take }) => take !== null);
  if (known.length === 0) return null;
  return (
    <section>
      <h3>To take along</h3>
      <ul className={styles.work}>
        {known.flatMap(({ carId, name, take }) =>
          take === null
            ? []
            : [
                { key: 'oil', words: oilTaken(take.oil, garage.volumeUnit) },
                { key: 'fuel', words: fuelTaken(take.fuel, garage.volumeUnit) },
              ].map(({ key, words }) => (
                <li key={`${carId} ${key}`}>
                  <span className={styles.box} aria-hidden="true" />
                  <span>
                    {name}, {words}
                  </span>
                </li>
              )),
        )}
      </ul>
    </section>
  );
}
