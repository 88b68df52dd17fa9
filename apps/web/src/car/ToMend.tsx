import type { CarView } from '@quartermark/api/client';
import type { Flag } from '@quartermark/engine';
import { flagSentence, needsALook } from '@quartermark/engine/display';
import type { Route } from 'next';
import Link from 'next/link';
import styles from './ToMend.module.css';

/** What was found odd in the log, with the way to the entry. Absent while there is nothing. */
export function ToMend({ view }: { view: CarView }) {
  const flags = view.analysis?.flags ?? [];
  const look = flags.filter((flag) => needsALook(flag.code));
  const known = flags.filter((flag) => !needsALook(flag.code));
  if (flags.length === 0) return null;
  return (
    <section aria-label="Entries to mend" className={styles.mend}>
      {look.length > 0 ? (
        <>
          <h2>Entries to mend</h2>
          <FlagList flags={look} garageId={view.garage.id} />
        </>
      ) : null}
      {known.length > 0 ? (
        <>
          <h2>Noticed in the log</h2>
          <FlagList flags={known} garageId={view.garage.id} />
        </>
      ) : null}
    </section>
  );
}

function FlagList({ flags, garageId }: { flags: readonly Flag[]; garageId: string }) {
  return (
    <ul className={styles.list}>
      {flags.map((flag) => (
        <li key={JSON.stringify(flag)} className={styles.flag}>
          <p>{flagSentence(flag)}</p>
          <p className={styles.ways}>
            <EntryLink id={flag.entry} garageId={garageId} words="Open the entry" />
            <EntryLink id={flag.other ?? null} garageId={garageId} words="Open the other one" />
          </p>
        </li>
      ))}
    </ul>
  );
}

type EntryLinkProps = { id: string | null; garageId: string; words: string };

function EntryLink({ id, garageId, words }: EntryLinkProps) {
  if (id === null) return null;
  return (
    <Link href={`/g/${garageId}/entry/${id}` as Route} prefetch={false}>
      {words}
    </Link>
  );
}
