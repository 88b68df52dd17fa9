import type { CarView } from '@quartermark/api/client';
import { goOutAgain } from '@quartermark/engine/display';
import { StateMark } from '../components/index.ts';
import styles from './GoOutAgain.module.css';
import { saidInOf } from './said-in.ts';

/** What a driver asks between two outings, answered in one line; absent for a car that is not in use. */
export function GoOutAgain({ view }: { view: CarView }) {
  const { analysis, road } = view;
  if (analysis === null || road === null) return null;
  const { mark, words } = goOutAgain(road, analysis, saidInOf(view));
  return (
    <section aria-label="Going out again" className={styles.again}>
      <StateMark kind={mark} />
      <div>
        <h2 className={styles.question}>May I go out again?</h2> <p>{words}</p>
      </div>
    </section>
  );
}
