import {
  firstToRunOutWords,
  happenedWords,
  SAID_OUTCOME_WORDS,
  saidThenWords,
} from '@quartermark/engine/display';
import type { JudgedLine } from '@quartermark/engine/said';
import type { Route } from 'next';
import Link from 'next/link';
import { Why } from '../components/index.ts';
import styles from './SaidLine.module.css';
import { SaidMark } from './SaidMark.tsx';
import type { SaidRow } from './said-groups.ts';

type SaidLineProps = { row: SaidRow; garageId: string };

/** One item between two services: what was said of it, what happened, and how far off it was. */
export function SaidLine({ row, garageId }: SaidLineProps) {
  const { carId, carName, itemName, line, nearer } = row;
  const first = firstToRunOutWords(line.said.binding);
  return (
    <li className={styles.row}>
      <h3>
        {itemName},{' '}
        <Link href={`/g/${garageId}/car/${carId}` as Route} prefetch={false}>
          {carName}
        </Link>
      </h3>
      <Outcome line={line} />
      <p>{saidThenWords(line.said)}</p>
      {first === null ? null : <p className={styles.soft}>To run out first: {first}.</p>}
      {nearer.length === 0 ? null : (
        <Why of={`${itemName}, ${carName}`} words="Said nearer the day">
          <ul className={styles.nearer}>
            {nearer.map((other) => (
              <li key={other.said.saidOn}>
                <p>{saidThenWords(other.said)}</p>
                <Outcome line={other} />
              </li>
            ))}
          </ul>
        </Why>
      )}
    </li>
  );
}

function Outcome({ line }: { line: JudgedLine }) {
  return (
    <p className={styles.outcome} data-outcome={line.outcome}>
      <SaidMark outcome={line.outcome} />
      <span>
        {SAID_OUTCOME_WORDS[line.outcome]}. {happenedWords(line)}
      </span>
    </p>
  );
}
