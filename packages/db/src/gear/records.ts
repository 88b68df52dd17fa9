import type { FitWindow } from '@quartermark/engine/gear';
import type { Tx } from '../connect.ts';
import type { EntryRow } from '../entries/read.ts';
import type { ItemRow } from '../items/read.ts';
import { listOrdersOfItems, type OrderRow } from '../orders/read.ts';
import {
  type GearRow,
  listEntriesOfGear,
  listGearOf,
  listGearOnceOn,
  listItemsOfGear,
} from './read.ts';
import { fittedOn } from './windows-of.ts';

/** All that is stored about a component, a piece of equipment or a person. */
export type GearRecord = {
  row: GearRow;
  items: ItemRow[];
  /** of all its items */
  orders: OrderRow[];
  /** tombstones included, as recorded */
  entries: EntryRow[];
  /** where a component is at the end of the day; null: on no car */
  fitted: FitWindow | null;
};

/** What is stored about these pieces, in their order. @param today civil date in the garage's zone */
export async function listGearRecords(
  tx: Tx,
  garageId: string,
  rows: readonly GearRow[],
  today: string,
): Promise<GearRecord[]> {
  const ids = rows.map(({ id }) => id);
  if (ids.length === 0) return [];
  const [items, entries] = await Promise.all([
    listItemsOfGear(tx, garageId, ids),
    listEntriesOfGear(tx, garageId, ids),
  ]);
  const itemIds = items.map(({ id }) => id);
  const orders = itemIds.length === 0 ? [] : await listOrdersOfItems(tx, garageId, itemIds);
  const [itemsOf, entriesOf] = [byGear(items), byGear(entries)];
  return rows.map((row) => {
    const own = itemsOf.get(row.id) ?? [];
    const about = entriesOf.get(row.id) ?? [];
    return {
      row,
      items: own,
      orders: orders.filter(({ itemId }) => own.some(({ id }) => id === itemId)),
      entries: about,
      fitted: row.kind === 'component' ? fittedOn(about, today) : null,
    };
  });
}

function byGear<T extends { gearId: string | null }>(rows: readonly T[]): Map<string, T[]> {
  const found = new Map<string, T[]>();
  for (const row of rows) {
    if (row.gearId === null) continue;
    const own = found.get(row.gearId);
    if (own) own.push(row);
    else found.set(row.gearId, [row]);
  }
  return found;
}

/** What is on a car at the end of a day, as it was added. */
export async function listGearOn(
  tx: Tx,
  garageId: string,
  carId: string,
  today: string,
): Promise<GearRecord[]> {
  const once = await listGearOnceOn(tx, garageId, carId);
  if (once.length === 0) return [];
  const rows = await listGearOf(tx, garageId, once);
  const records = await listGearRecords(tx, garageId, rows, today);
  return records.filter(({ fitted }) => fitted?.car === carId);
}
