'use client';

import type { OverviewRow } from '@quartermark/api/client';
import { itemUrgency, type LaneItem, laneItem } from '@quartermark/engine/display';
import { useQuery } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { refusalWords } from '../client/refusal-words.ts';
import { useTRPC } from '../client/trpc.ts';
import { Button, Notice } from '../components/index.ts';
import styles from './Board.module.css';

type AllItemsProps = {
  row: OverviewRow;
  garageId: string;
  /** stands there until they are fetched */
  meanwhile: ReactNode;
  line: (item: LaneItem) => ReactNode;
};

/** Everything that is watched on a car, most urgent first; fetched when somebody opens its lane. */
export function AllItems({ row, garageId, meanwhile, line }: AllItemsProps) {
  const trpc = useTRPC();
  const view = useQuery(trpc.car.view.queryOptions({ garageId, carId: row.carId }));
  if (view.isError)
    return (
      <>
        {meanwhile}
        <Notice
          tone="alarm"
          actions={<Button onClick={() => void view.refetch()}>Try again</Button>}
        >
          {refusalWords(view.error).message}
        </Notice>
      </>
    );
  if (!view.data?.analysis)
    return (
      <>
        {meanwhile}
        <p className={styles.more} role="status">
          {view.data ? 'Being worked out …' : 'Fetching the rest …'}
        </p>
      </>
    );
  const { analysis, items } = view.data;
  const named = new Map(items.map(({ id, item }) => [id, item]));
  return (
    <ol className={styles.items}>
      {analysis.items
        .map((result, at) => ({ result, at, urgency: itemUrgency(result) }))
        .sort((a, b) => a.urgency - b.urgency || a.at - b.at)
        .map(({ result }) => line(laneItem(result, named.get(result.id))))}
    </ol>
  );
}
