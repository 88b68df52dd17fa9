import { weekdayAhead } from '@quartermark/engine/display';
import type { Accepted, CarReadiness } from '@quartermark/engine/readiness';
import { takenOn } from './of-page.ts';
import styles from './TakenOn.module.css';

/** Who took what upon himself, when and why. @example "Oda took it on, on Mon 15 June: seen good this morning" */
export const takenOnWords = ({ by, on, because }: Accepted, today: string): string =>
  `${by} took it on, on ${weekdayAhead(on, { asOf: today })}: ${because}`;

/** What stands beside a verdict where somebody took something upon himself; absent where nobody did. */
export function TakenOn({ readiness, today }: { readiness: CarReadiness; today: string }) {
  const needs = takenOn(readiness);
  if (needs.length === 0) return null;
  return (
    <ul className={styles.taken}>
      {needs.map(({ id, title, accepted }) => (
        <li key={id}>
          {title}: {accepted ? takenOnWords(accepted, today) : null}
        </li>
      ))}
    </ul>
  );
}
