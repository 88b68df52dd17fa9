import { marginWords, needStatusWords } from '@quartermark/engine/display';
import type { Need, SaidIn } from '@quartermark/engine/readiness';
import type { Route } from 'next';
import Link from 'next/link';
import type { ReactNode } from 'react';
import { StateWord, Why } from '../components/index.ts';
import type { Door } from '../event-day/door-of.ts';
import styles from './NeedList.module.css';

type NeedListProps = {
  /** in the order in which they are to be read */
  needs: readonly Need[];
  saidIn: SaidIn;
  doorOf: (need: Need) => Door | null;
  /** the entries a need rests on, shown when somebody asks for them; absent: not here */
  evidence?: (ids: readonly string[]) => ReactNode;
};

/** What is asked of a car: the word, why, what it rests on, what to do about it and where that is written down. */
export function NeedList({ needs, saidIn, doorOf, evidence }: NeedListProps) {
  return (
    <ul className={styles.list}>
      {needs.map((need) => (
        <li key={need.id} className={styles.need}>
          <NeedWords need={need} saidIn={saidIn} />
          <Mend need={need} door={doorOf(need)} />
          {evidence && need.evidence.length > 0 ? (
            <Why of={need.title} words={restsOn(need.evidence.length)}>
              {evidence(need.evidence)}
            </Why>
          ) : null}
        </li>
      ))}
    </ul>
  );
}

function NeedWords({ need, saidIn }: { need: Need; saidIn: SaidIn }) {
  const { title, weight, status, reason, margin, accepted } = need;
  const { mark, word } = needStatusWords(status);
  return (
    <>
      <h3 className={styles.title}>{title}</h3>
      <p className={styles.state}>
        <StateWord kind={mark} words={word} />
        {weight === 'advice' ? <span className={styles.soft}>advice</span> : null}
        {margin === null ? null : (
          <span className={styles.soft}>{marginWords(margin, saidIn)}</span>
        )}
      </p>
      <p>{reason}</p>
      {accepted === null ? null : (
        <p>
          Taken on by {accepted.by}: {accepted.because}
        </p>
      )}
    </>
  );
}

function Mend({ need: { title, remedy }, door }: { need: Need; door: Door | null }) {
  if (remedy === null) return null;
  return (
    <p className={styles.mend}>
      <span>{remedy.what}.</span>
      {door === null ? null : (
        <Link href={door.href as Route} prefetch={false} className={styles.door}>
          {door.words}
          <span className={styles.unseen}>: {title}</span>
        </Link>
      )}
    </p>
  );
}

const restsOn = (count: number) =>
  count === 1 ? 'The entry it rests on' : `The ${count} entries it rests on`;
