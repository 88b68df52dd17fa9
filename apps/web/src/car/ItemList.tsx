'use client';

import type { CarView, ItemView } from '@quartermark/api/client';
import type { ItemResult } from '@quartermark/engine';
import { itemUrgency } from '@quartermark/engine/display';
import type { Route } from 'next';
import { Button, ButtonLink, EmptyState } from '../components/index.ts';
import { useHeldOrder } from '../garage/use-held-order.ts';
import styles from './ItemList.module.css';
import { ItemRow } from './ItemRow.tsx';

export type WatchedItem = ItemView & {
  /** null: added or changed since the figures were worked out */
  result: ItemResult | null;
};

/** Everything that is watched on a car, what runs out first at the top. */
export function ItemList({ view }: { view: CarView }) {
  const { rows, moved, sortAgain } = useHeldOrder(byUrgency(view), ({ id }) => id);
  const add = `/g/${view.garage.id}/car/${view.carId}/item/add` as Route;
  if (rows.length === 0)
    return (
      <EmptyState
        title="Begin with what runs out"
        actions={
          <ButtonLink href={add} look="main">
            Add an item
          </ButtonLink>
        }
      >
        <p>
          Say what runs out on this car, such as engine oil or brake fluid, with the limits its
          manual gives and the day it was last done.
        </p>
      </EmptyState>
    );
  return (
    <section aria-label="Items" className={styles.items}>
      <div className={styles.head}>
        <h2>What runs out first</h2>
        <ButtonLink href={add} look="quiet">
          Add an item
        </ButtonLink>
      </div>
      {moved ? (
        <p className={styles.moved}>
          Order out of date{' '}
          <Button look="quiet" onClick={sortAgain}>
            Sort by urgency
          </Button>
        </p>
      ) : null}
      <ol className={styles.list}>
        {rows.map((row) => (
          <ItemRow key={row.id} row={row} view={view} />
        ))}
      </ol>
    </section>
  );
}

function byUrgency({ items, analysis }: CarView): WatchedItem[] {
  const results = new Map(analysis?.items.map((result) => [result.id, result]));
  return items
    .map((item) => ({ ...item, result: results.get(item.id) ?? null }))
    .sort((a, b) => urgency(a) - urgency(b) || a.position - b.position);
}

const urgency = ({ result }: WatchedItem) =>
  result ? itemUrgency(result) : Number.MAX_SAFE_INTEGER;
