'use client';

import type { EventCar, EventPage } from '@quartermark/api/client';
import {
  fuelTaken,
  needStatusWords,
  oilTaken,
  readyWords,
  workDays,
  workParts,
} from '@quartermark/engine/display';
import type { CarReadiness, WorkLine } from '@quartermark/engine/readiness';
import { StateWord, Tick } from '../../components/index.ts';
import type { LineTick } from './own-ticks.ts';
import styles from './PocketEvent.module.css';

type EventCarPartProps = {
  page: EventPage;
  car: EventCar;
  /** by id of the line of work */
  ticks: ReadonlyMap<string, LineTick>;
  onTick: (line: WorkLine, done: boolean) => void;
};

/** One car of the event: its verdict, what is not met, the work to tick, what to take along. */
export function EventCarPart({ page, car, ticks, onTick }: EventCarPartProps) {
  const { readiness, take, name } = car;
  const { volumeUnit, today } = page.garage;
  const work = page.work.filter((line) => line.car === car.carId);
  if (readiness === null)
    return (
      <section aria-label={name} className={styles.car}>
        <h2>{name}</h2>
        <p>A part of its log cannot be read, so nobody can say.</p>
      </section>
    );
  const { mark, word } = readyWords(readiness.verdict, { asOf: today });
  return (
    <section aria-label={name} className={styles.car}>
      <h2>{name}</h2>
      <p className={styles.verdict}>
        <StateWord kind={mark} words={word} />
      </p>
      <NotFine readiness={readiness} />
      <section aria-label={`Work on ${name}`} className={styles.work}>
        <h3>{work.length === 0 ? 'No work before it, by the log.' : 'Work'}</h3>
        {work.map((line) => (
          <Tick
            key={line.id}
            label={line.blocking ? line.what : `${line.what} (advice)`}
            hint={hintOf(line, ticks.get(line.id), today)}
            checked={ticks.get(line.id)?.done ?? false}
            onChange={(done) => onTick(line, done)}
          />
        ))}
      </section>
      {take === null ? null : (
        <>
          <h3>To take along</h3>
          <p>{oilTaken(take.oil, volumeUnit)}</p>
          <p>{fuelTaken(take.fuel, volumeUnit)}</p>
        </>
      )}
    </section>
  );
}

function hintOf(line: WorkLine, tick: LineTick | undefined, today: string): string {
  const spoken = { asOf: today };
  const who = tick === undefined ? null : whoWords(tick);
  return [workDays(line, spoken), workParts(line, spoken), who]
    .filter((part) => part !== null)
    .join('; ');
}

function whoWords({ done, by, waits }: LineTick): string {
  const what = done ? 'ticked' : 'tick taken off';
  if (by !== null) return `${what} by ${by}`;
  return waits ? `${what} on this phone, waits for signal` : `${what} on this phone`;
}

/** What is asked and not fine, with the reason; what somebody took on is said where he did. */
function NotFine({ readiness }: { readiness: CarReadiness }) {
  const open = readiness.needs.filter(
    ({ status, accepted }) => status !== 'met' && accepted === null,
  );
  const taken = readiness.needs.filter(({ accepted }) => accepted !== null);
  return (
    <>
      {open.length === 0 ? null : (
        <ul className={styles.needs}>
          {open.map(({ id, title, status, weight, reason }) => (
            <li key={id}>
              <StateWord
                kind={needStatusWords(status).mark}
                words={`${title}, ${lower(needStatusWords(status).word)}`}
                detail={`${weight === 'advice' ? 'advice; ' : ''}${reason}`}
              />
            </li>
          ))}
        </ul>
      )}
      {taken.map(({ id, title, accepted }) => (
        <p key={id}>
          {title}: taken on by {accepted?.by}, because {accepted?.because}
        </p>
      ))}
    </>
  );
}

const lower = (word: string) => word.charAt(0).toLowerCase() + word.slice(1);
