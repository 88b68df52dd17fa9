import type { PlannedLayUpView } from '@quartermark/api/client';
import type { Route } from 'next';
import Link from 'next/link';
import { ButtonLink } from '../components/index.ts';
import { planWhenWords, planWords } from '../lay-up/plan-words.ts';
import styles from './EventsScreen.module.css';

type PlannedLayUpsProps = {
  garageId: string;
  today: string;
  plans: readonly PlannedLayUpView[];
  names: Readonly<Record<string, string>>;
};

/** The lay-ups that are meant to come, by their first day, and the way to plan one more. */
export function PlannedLayUps({ garageId, today, plans, names }: PlannedLayUpsProps) {
  return (
    <section aria-label="Planned lay-ups" className={styles.section}>
      <h2>Planned lay-ups</h2>
      {plans.length === 0 ? (
        <p>None is planned. What runs out with use falls due later where one is.</p>
      ) : (
        <ul className={styles.list}>
          {plans.map(({ layUpId, carId, layUp }) => (
            <li key={layUpId} className={styles.row}>
              <p className={styles.days}>
                {capital(planWords(layUp))}
                <span className={styles.when}>{planWhenWords(layUp, today)}</span>
              </p>
              <h3>
                <Link
                  href={`/g/${garageId}/lay-up/${layUpId}` as Route}
                  prefetch={false}
                  className={styles.link}
                >
                  {names[carId] ?? 'a car that has left'}
                </Link>
                <span className={styles.sort}>Lay-up</span>
              </h3>
            </li>
          ))}
        </ul>
      )}
      <p className={styles.way}>
        <ButtonLink href={`/g/${garageId}/lay-up/add` as Route}>Plan a lay-up</ButtonLink>
      </p>
    </section>
  );
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
