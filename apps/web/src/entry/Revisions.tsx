'use client';

import type { RevisionView } from '@quartermark/api/client';
import type { NamedItems, Names } from '@quartermark/engine/display';
import { useSuspenseQuery } from '@tanstack/react-query';
import { useTRPC } from '../client/trpc.ts';
import { joinClasses } from '../components/index.ts';
import { momentWords } from '../garage/moment-words.ts';
import { entryRows } from '../record/entry-rows.ts';
import { usePartNames } from '../record/use-part-names.ts';
import styles from './Revisions.module.css';

type RevisionsProps = { garageId: string; entryId: string; items: NamedItems; zone: string };

/** Everything the entry ever said, newest first; what differs from the one before is marked in words. */
export function Revisions({ garageId, entryId, items, zone }: RevisionsProps) {
  const trpc = useTRPC();
  const { data } = useSuspenseQuery(trpc.entry.revisions.queryOptions({ garageId, entryId }));
  const parts = usePartNames(garageId, ...data.flatMap(({ body }) => body ?? []));
  return (
    <section aria-labelledby="revisions" className={styles.revisions}>
      <h2 id="revisions">What it said, and who wrote it</h2>
      <ol reversed className={styles.list}>
        {data.map((one, at) => (
          <li key={one.revision} className={styles.revision}>
            <h3>{`${deed(one)} by ${one.by}, ${momentWords(one.at, zone)}`}</h3>
            <Rows one={one} before={data[at + 1] ?? null} items={items} parts={parts} />
          </li>
        ))}
      </ol>
    </section>
  );
}

function deed({ revision, body }: RevisionView): string {
  if (body === null) return 'Removed';
  return revision === 1 ? 'Recorded' : 'Amended';
}

type RowsProps = {
  one: RevisionView;
  before: RevisionView | null;
  items: NamedItems;
  parts: Names;
};

function Rows({ one, before, items, parts }: RowsProps) {
  if (one.body === null) return null;
  const rows = entryRows(one.body, items, parts);
  const earlier = before?.body ? entryRows(before.body, items, parts) : null;
  return (
    <dl className={styles.rows}>
      {rows.map(({ label, words }, at) => {
        const changed = earlier !== null && earlier[at]?.words !== words;
        return (
          <div key={label} className={joinClasses(styles.row, changed && styles.changed)}>
            <dt>
              {label}
              {changed ? ' (changed)' : ''}
            </dt>
            <dd>{words}</dd>
          </div>
        );
      })}
    </dl>
  );
}
