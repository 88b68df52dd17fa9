'use client';

import type { DueLineView } from '@quartermark/api/client';
import type { DueOrder } from '@quartermark/engine/display';
import { refusalWords } from '../client/refusal-words.ts';
import { useMorePages } from '../client/use-more-pages.ts';
import { Button, Notice, Skeleton } from '../components/index.ts';
import { useHeldOrder } from '../garage/use-held-order.ts';
import styles from './DueLines.module.css';
import { DueRow } from './DueRow.tsx';
import type { DuePart } from './due-filter.ts';
import { dueGroups } from './due-groups.ts';
import type { DuePartQuery } from './use-due-part.ts';

type DueLinesProps = {
  query: DuePartQuery;
  part: DuePart;
  order: DueOrder;
  garageId: string;
  /** civil date of the garage */
  today: string;
};

const PART_WORDS: Readonly<Record<DuePart, string>> = {
  dated: 'lines',
  apart: 'lines of cars that are not in use',
  unsure: 'lines that are not on record',
};

/** One part of the list, grouped, with its further pages. */
export function DueLines({ query, part, order, garageId, today }: DueLinesProps) {
  const { more, busy } = useMorePages(query);
  const { data, isPlaceholderData, hasNextPage } = query;
  const lines = data?.pages.flatMap(({ rows }) => rows) ?? [];
  return (
    <div aria-busy={isPlaceholderData || undefined} className={styles.part}>
      {query.isError ? (
        <Notice
          tone="alarm"
          title={`The ${PART_WORDS[part]} could not be fetched.`}
          actions={<Button onClick={() => void query.refetch()}>Try again</Button>}
        >
          {refusalWords(query.error).message}
        </Notice>
      ) : null}
      {query.isPending ? <Skeleton of={`the ${PART_WORDS[part]}`} rows={4} /> : null}
      <Groups
        // another order is a list of its own, whose lines have not been held yet
        key={`${order} ${isPlaceholderData}`}
        lines={lines}
        order={order}
        garageId={garageId}
        today={today}
      />
      {hasNextPage ? (
        <div className={styles.more}>
          <Button onClick={more} busy={busy} busyWords="Fetching more …">
            Show more {PART_WORDS[part]}
          </Button>
        </div>
      ) : null}
    </div>
  );
}

type GroupsProps = Omit<DueLinesProps, 'query' | 'part'> & { lines: readonly DueLineView[] };

const idOf = ({ carId, id }: DueLineView) => `${carId} ${id}`;

function Groups({ lines, order, garageId, today }: GroupsProps) {
  const { rows, moved, sortAgain } = useHeldOrder(lines, idOf);
  return (
    <>
      {moved ? (
        <p className={styles.moved}>
          Order out of date{' '}
          <Button look="quiet" onClick={sortAgain}>
            Sort again
          </Button>
        </p>
      ) : null}
      {dueGroups(rows, order, { asOf: today }).map(({ key, title, lines }) => (
        <section key={key} aria-labelledby={`due-${key}`} className={styles.group}>
          <h2 id={`due-${key}`}>{title}</h2>
          {key === 'unsure' ? (
            <p className={styles.note}>
              Nobody can say when these fall due, so none of them counts as good. Say when each was
              last done.
            </p>
          ) : null}
          <ul className={styles.list}>
            {lines.map((line) => (
              <DueRow
                key={idOf(line)}
                line={line}
                garageId={garageId}
                carIsSaid={order === 'car' && key !== 'unsure'}
              />
            ))}
          </ul>
        </section>
      ))}
    </>
  );
}
