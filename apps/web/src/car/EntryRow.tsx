import type { EntryView, ItemView } from '@quartermark/api/client';
import type { Flag } from '@quartermark/engine';
import { entryLine, flagSentence } from '@quartermark/engine/display';
import type { Route } from 'next';
import Link from 'next/link';
import type { ReactNode } from 'react';
import { joinClasses } from '../components/index.ts';
import { dayWords } from '../record/day-words.ts';
import { SmallPhotos } from '../record/SmallPhotos.tsx';
import { usePartNames } from '../record/use-part-names.ts';
import styles from './EntryRow.module.css';

/** What an entry is read beside: the items it may name, and what was found odd in the log. */
export type EntryContext = {
  garage: { id: string };
  items: readonly ItemView[];
  analysis: { flags: readonly Flag[] } | null;
};

type EntryRowProps = {
  entry: EntryView;
  view: EntryContext;
  /** without its note and what was found odd */
  brief?: boolean;
  /** whose it is, where the list is not of one car */
  whose?: string | undefined;
  /** names of what the entry speaks of, by id, where they are known */
  names?: Readonly<Record<string, string>> | undefined;
  /** what stands beneath */
  children?: ReactNode;
};

/** One entry in words, its figures as typed; it leads to the entry's own page. */
export function EntryRow({
  entry: shown,
  view,
  brief = false,
  whose,
  names,
  children,
}: EntryRowProps) {
  const { entry, removed } = shown;
  const parts = usePartNames(view.garage.id, ...(names ? [] : [entry]));
  const { title, detail } = entryLine(entry, view.items, names ?? parts);
  const flags = view.analysis?.flags.filter((flag) => flag.entry === entry.id) ?? [];
  return (
    <li className={joinClasses(styles.row, removed && styles.removed)}>
      <time dateTime={entry.on} className={styles.day}>
        {dayWords(entry)}
      </time>
      <div className={styles.words}>
        {whose ? <p className={styles.whose}>{whose}</p> : null}
        <p>
          <Link
            href={`/g/${view.garage.id}/entry/${entry.id}` as Route}
            prefetch={false}
            className={styles.link}
          >
            {title}
          </Link>
          {detail ? <span className={styles.detail}>: {detail}</span> : null}
        </p>
        {brief ? null : (
          <>
            {entry.note ? <p className={styles.note}>{entry.note}</p> : null}
            <SmallPhotos garageId={view.garage.id} ids={entry.photos} />
            {flags.map((flag) => (
              <p key={flag.code} className={styles.flag}>
                {flagSentence(flag)}
              </p>
            ))}
            <Changed shown={shown} />
          </>
        )}
        {children}
      </div>
    </li>
  );
}

/** How often it was put right; a removal is no such time. */
function Changed({ shown: { revision, removed } }: { shown: EntryView }) {
  const amended = revision - (removed ? 2 : 1);
  const times = amended === 1 ? 'Amended once' : `Amended ${amended} times`;
  if (!removed && amended === 0) return null;
  const words = [removed ? 'Removed' : '', amended > 0 ? times : ''].filter((word) => word !== '');
  return <p className={styles.changed}>{words.join(' · ')}</p>;
}
