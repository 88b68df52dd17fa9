'use client';

import type { GarageView, GearRow } from '@quartermark/api/client';
import { useInfiniteQuery } from '@tanstack/react-query';
import { EntryRow } from '../car/EntryRow.tsx';
import { historyPages } from '../car/history-pages.ts';
import { refusalWords } from '../client/refusal-words.ts';
import { useTRPC } from '../client/trpc.ts';
import { useMorePages } from '../client/use-more-pages.ts';
import { Button, Notice, Skeleton } from '../components/index.ts';
import styles from './GearEntries.module.css';

type GearEntriesProps = { row: GearRow; garage: GarageView };

/** What was recorded about it, on whichever car, the newest first. */
export function GearEntries({ row, garage }: GearEntriesProps) {
  const trpc = useTRPC();
  const history = useInfiniteQuery(
    trpc.entry.history.infiniteQueryOptions(
      { garageId: garage.id, gearId: row.gearId },
      historyPages,
    ),
  );
  const { more, busy } = useMorePages(history);
  const entries = history.data?.pages.flatMap((page) => page.entries) ?? [];
  const context = { garage, items: row.items, analysis: row.analysis };
  return (
    <section aria-labelledby="entries" className={styles.entries}>
      <h2 id="entries">Its entries</h2>
      {history.isError ? (
        <Notice
          tone="alarm"
          title="Its entries could not be fetched."
          actions={<Button onClick={() => void history.refetch()}>Try again</Button>}
        >
          {refusalWords(history.error).message}
        </Notice>
      ) : null}
      {history.isPending ? <Skeleton of="its entries" rows={3} /> : null}
      <ul className={styles.list}>
        {entries.map((entry) => (
          <EntryRow key={entry.entry.id} entry={entry} view={context} />
        ))}
      </ul>
      {history.isSuccess && entries.length === 0 ? (
        <p className={styles.none}>Nothing is on record about it yet.</p>
      ) : null}
      {history.hasNextPage ? (
        <Button onClick={more} busy={busy} busyWords="Fetching older entries …">
          Show older entries
        </Button>
      ) : null}
    </section>
  );
}
