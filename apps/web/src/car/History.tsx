'use client';

import type { EntryView } from '@quartermark/api/client';
import { keepPreviousData, useInfiniteQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { refusalWords } from '../client/refusal-words.ts';
import { useTRPC } from '../client/trpc.ts';
import { useMorePages } from '../client/use-more-pages.ts';
import { Button, Notice, Skeleton } from '../components/index.ts';
import { type EntryContext, EntryRow } from './EntryRow.tsx';
import styles from './History.module.css';
import { type FilterCar, HistoryFilterBar } from './HistoryFilterBar.tsx';
import { type HistoryFilter, historyQuestion, writeFilter } from './history-filter.ts';
import { historyPages } from './history-pages.ts';

/** Longer than a pause between two letters. */
const TYPING_MS = 300;

type HistoryProps = {
  /** of a car; a garage's own history has none, and tells of each entry whose it is */
  view: EntryContext & { carId?: string };
  filter: HistoryFilter;
  /** to which a garage's history can be narrowed */
  cars?: readonly FilterCar[];
  title?: string;
};

/** The record, newest first; the filter stands in the address and survives a reload. */
export function History({ view, filter: first, cars, title = 'History' }: HistoryProps) {
  const trpc = useTRPC();
  const [filter, setFilter] = useState(first);
  const settled = useSettled(filter);
  const { carId } = view;
  const where = { garageId: view.garage.id, ...(carId === undefined ? {} : { carId }) };
  const history = useInfiniteQuery({
    ...trpc.entry.history.infiniteQueryOptions(historyQuestion(where, settled), historyPages),
    placeholderData: keepPreviousData,
  });
  const { more, busy } = useMorePages(history);
  const pages = history.data?.pages ?? [];
  return (
    <section aria-labelledby="history" className={styles.history}>
      <h2 id="history">{title}</h2>
      <HistoryFilterBar filter={filter} onChange={setFilter} cars={cars} />
      {history.isError ? (
        <Notice
          tone="alarm"
          title="The history could not be fetched."
          actions={<Button onClick={() => void history.refetch()}>Try again</Button>}
        >
          {refusalWords(history.error).message}
        </Notice>
      ) : null}
      {history.isPending ? <Skeleton of="the history" rows={6} /> : null}
      <ul className={styles.list} aria-busy={history.isPlaceholderData || undefined}>
        {pages.flatMap(({ entries, names }) =>
          entries.map((entry) => (
            <EntryRow
              key={entry.entry.id}
              entry={entry}
              view={view}
              names={names}
              whose={carId === undefined ? whoseWords(entry, names) : undefined}
            />
          )),
        )}
      </ul>
      {history.isSuccess && pages.every(({ entries }) => entries.length === 0) ? (
        <Nothing filter={settled} />
      ) : null}
      {history.hasNextPage ? (
        <div className={styles.more}>
          <Button onClick={more} busy={busy} busyWords="Fetching older entries …">
            Show older entries
          </Button>
        </div>
      ) : null}
    </section>
  );
}

/** The car and the piece or person an entry is about. */
function whoseWords({ entry }: EntryView, names: Readonly<Record<string, string>>): string {
  const part = 'component' in entry ? entry.component : undefined;
  const ids = [entry.car, entry.gear ?? part].flatMap((id) => id ?? []);
  return ids.flatMap((id) => names[id] ?? []).join(', ') || 'The garage';
}

function Nothing({ filter }: { filter: HistoryFilter }) {
  const bare = writeFilter({ ...filter, removed: false }) === '';
  return (
    <p className={styles.nothing}>
      {bare
        ? 'Nothing is on record yet. Press “What happened” to write the first entry.'
        : 'No entry fits. Take away a word, or choose all kinds.'}
    </p>
  );
}

/** The filter once typing has paused; from then on it stands in the address. */
function useSettled(filter: HistoryFilter): HistoryFilter {
  const [settled, setSettled] = useState(filter);
  useEffect(() => {
    if (settled === filter) return;
    // a choice is settled at once, only typing is waited for
    const wait = settled.text === filter.text ? 0 : TYPING_MS;
    const timer = setTimeout(() => {
      setSettled(filter);
      window.history.replaceState(null, '', window.location.pathname + writeFilter(filter));
    }, wait);
    return () => clearTimeout(timer);
  }, [filter, settled]);
  return settled;
}
