import { workWords } from '@quartermark/engine/display';
import {
  type AddedUse,
  addedId,
  type FirstToRunOut,
  firstToRunOut,
  type WhatIf,
} from '@quartermark/engine/what-if';
import type { Route } from 'next';
import Link from 'next/link';
import { StateWord } from '../components/index.ts';
import { EVENT_NAME, spanWords } from '../event/event-words.ts';
import styles from './WhatIfAnswer.module.css';

type RunsOutListProps = {
  answer: WhatIf;
  asked: readonly AddedUse[];
  itemHref: (id: string) => string;
};

const HOW: Readonly<Record<FirstToRunOut['how'], string>> = {
  already: 'Has run out already',
  likely: 'Likely to run out before the end',
  could: 'Could run out before the end',
};

/** What runs out before what was added is over, and by when its work is to be done. */
export function RunsOutList({ answer, asked, itemHref }: RunsOutListProps) {
  const running = firstToRunOut(answer.outlooks);
  if (running.length === 0) return null;
  return (
    <section className={styles.part}>
      <h2>What runs out before the end</h2>
      <ul className={styles.list}>
        {running.map((one) => (
          <li key={one.id} className={styles.runsOut}>
            <h3>
              <Link href={itemHref(one.id) as Route} prefetch={false}>
                {one.name}
              </Link>
            </h3>
            <StateWord
              kind={one.how === 'already' ? 'overdue' : 'dueSoon'}
              words={HOW[one.how] + ofWhat(one, asked)}
              detail={workWords(one, { asOf: answer.asOf })}
            />
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Of several lines, the first during which it runs out. */
function ofWhat({ how, outlookId }: FirstToRunOut, asked: readonly AddedUse[]): string {
  const line = asked.find((_, at) => addedId(at) === outlookId);
  if (how === 'already' || asked.length === 1 || !line) return '';
  return ` of: ${EVENT_NAME[line.sort].toLowerCase()}, ${spanWords(line)}`;
}
