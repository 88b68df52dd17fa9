'use client';

import type { CarView } from '@quartermark/api/client';
import { keepPreviousData, useInfiniteQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { refusalWords } from '../client/refusal-words.ts';
import { useTRPC } from '../client/trpc.ts';
import { useMorePages } from '../client/use-more-pages.ts';
import { Button, Notice, Skeleton } from '../components/index.ts';
import { EntryRow } from './EntryRow.tsx';
import styles from './History.module.css';
import { HistoryFilterBar } from './HistoryFilterBar.tsx';
import { type HistoryFilter, historyQuestion, writeFilter } from './history-filter.ts';
import { historyPages } from './history-pages.ts';

/** Longer than a pause between two letters. */
const TYPING_MS = 300;

type HistoryProps = { view: CarView; filter: HistoryFilter };

/** The car's record, newest first; the filter stands in the address and survives a reload. */
export function History({ view, filter: first }: HistoryProps) {
  const trpc = useTRPC();
  const [filter, setFilter] = useState(first);
  const settled = useSettled(filter);
  const where = { garageId: view.garage.id, carId: view.carId };
  const history = useInfiniteQuery({
    ...trpc.entry.history.infiniteQueryOptions(historyQuestion(where, settled), historyPages),
    placeholderData: keepPreviousData,
  });
  const { more, busy } = useMorePages(history);
  const entries = history.data?.pages.flatMap((page) => page.entries) ?? [];
  return (
    <section aria-labelledby="history" className={styles.history}>
      <h2 id="history">History</h2>
      <HistoryFilterBar filter={filter} onChange={setFilter} />
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
        {entries.map((entry) => (
          <EntryRow key={entry.entry.id} entry={entry} view={view} />
        ))}
      </ul>
      {history.isSuccess && entries.length === 0 ? <Nothing filter={settled} /> : null}
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
