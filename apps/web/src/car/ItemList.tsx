'use client';

import type { ItemView } from '@quartermark/api/client';
import type { ItemResult } from '@quartermark/engine';
import { itemUrgency } from '@quartermark/engine/display';
import type { Route } from 'next';
import { Button, ButtonLink, EmptyState } from '../components/index.ts';
import { useHeldOrder } from '../garage/use-held-order.ts';
import type { Owned } from '../items/owned.ts';
import styles from './ItemList.module.css';
import { ItemRow } from './ItemRow.tsx';

export type WatchedItem = ItemView & {
  /** null: added or changed since the figures were worked out */
  result: ItemResult | null;
};

/** Everything that is watched on a car or a piece of gear, what runs out first at the top. */
export function ItemList({ owned }: { owned: Owned }) {
  const { rows, moved, sortAgain } = useHeldOrder(byUrgency(owned), ({ id }) => id);
  const add = `${owned.href}/item/add` as Route;
  if (rows.length === 0) return <NothingWatched owned={owned} add={add} />;
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
        {rows.slice(0, 1).map((row) => (
          <ItemRow key={row.id} row={row} owned={owned} />
        ))}
      </ol>
      {rows.length > 1 ? (
        <>
          <h2 className={styles.rest}>Then, by urgency</h2>
          <ol className={styles.list}>
            {rows.slice(1).map((row) => (
              <ItemRow key={row.id} row={row} owned={owned} />
            ))}
          </ol>
        </>
      ) : null}
    </section>
  );
}

function NothingWatched({ owned, add }: { owned: Owned; add: Route }) {
  if ('gearId' in owned.owner)
    return (
      <EmptyState
        title="Nothing is watched on it"
        actions={
          <ButtonLink href={add} look="main">
            Add an item
          </ButtonLink>
        }
      >
        <p>
          Say what runs out, such as a date on its label or a yearly look, with the limit its maker
          gives and the day it was last done.
        </p>
      </EmptyState>
    );
  return (
    <EmptyState
      title="Begin with what runs out"
      actions={
        <>
          <ButtonLink href={`${owned.href}/begin` as Route} look="main">
            Go through the usual list
          </ButtonLink>
          <ButtonLink href={add}>Add an item</ButtonLink>
        </>
      }
    >
      <p>
        Go through what mostly runs out on a car like this and say when each was last done, papers
        or none. Or add one item, such as engine oil, with the limits its manual gives.
      </p>
    </EmptyState>
  );
}

function byUrgency({ items, analysis }: Owned): WatchedItem[] {
  const results = new Map(analysis?.items.map((result) => [result.id, result]));
  return items
    .map((item) => ({ ...item, result: results.get(item.id) ?? null }))
    .sort((a, b) => urgency(a) - urgency(b) || a.position - b.position);
}

const urgency = ({ result }: WatchedItem) =>
  result ? itemUrgency(result) : Number.MAX_SAFE_INTEGER;
