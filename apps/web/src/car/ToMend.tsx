'use client';

import type { CarView, EntryView } from '@quartermark/api/client';
import type { Flag } from '@quartermark/engine';
import { flagSentence, needsALook } from '@quartermark/engine/display';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import Link from 'next/link';
import { useTRPC } from '../client/trpc.ts';
import { EntryRow } from './EntryRow.tsx';
import { flaggedEntries } from './flagged-entries.ts';
import styles from './ToMend.module.css';
import { TwinWays } from './TwinWays.tsx';

/** What was found odd in the log, beside the entry as it was typed. Absent while there is nothing. */
export function ToMend({ view }: { view: CarView }) {
  const trpc = useTRPC();
  const flags = view.analysis?.flags ?? [];
  const entryIds = flaggedEntries(view.analysis);
  const { data } = useQuery({
    ...trpc.entry.some.queryOptions({ garageId: view.garage.id, entryIds }),
    enabled: entryIds.length > 0,
    placeholderData: keepPreviousData,
  });
  if (flags.length === 0) return null;
  const entries = new Map(data?.map((one) => [one.entry.id, one]));
  const list = { entries, view };
  return (
    <div className={styles.mend}>
      <FlagList
        title="Entries to mend"
        flags={flags.filter((flag) => needsALook(flag.code))}
        {...list}
      />
      <FlagList
        title="Noticed in the log"
        flags={flags.filter((flag) => !needsALook(flag.code))}
        {...list}
      />
    </div>
  );
}

type FlagListProps = {
  title: string;
  flags: readonly Flag[];
  entries: ReadonlyMap<string, EntryView>;
  view: CarView;
};

function FlagList({ title, flags, entries, view }: FlagListProps) {
  if (flags.length === 0) return null;
  return (
    <section aria-label={title}>
      <h2>{title}</h2>
      <ul className={styles.list}>
        {flags.map((flag) => (
          <FlagRow
            key={JSON.stringify(flag)}
            flag={flag}
            entry={entries.get(flag.entry ?? '') ?? null}
            view={view}
          />
        ))}
      </ul>
    </section>
  );
}

type FlagRowProps = { flag: Flag; entry: EntryView | null; view: CarView };

function FlagRow({ flag, entry, view }: FlagRowProps) {
  const more = (
    <>
      <p>{flagSentence(flag)}</p>
      <p className={styles.ways}>
        <EntryLink id={flag.entry} garageId={view.garage.id} words="Open the entry" />
        <EntryLink id={flag.other ?? null} garageId={view.garage.id} words="Open the other one" />
        {flag.code === 'looksTheSame' && entry ? (
          <TwinWays flag={flag} entry={entry} view={view} />
        ) : null}
      </p>
    </>
  );
  if (!entry) return <li className={styles.alone}>{more}</li>;
  return (
    <EntryRow entry={entry} view={view} brief>
      <div className={styles.more}>{more}</div>
    </EntryRow>
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
