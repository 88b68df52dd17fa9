import { analyseGear } from '@quartermark/engine/gear';
import {
  type BookOrder,
  type Gear,
  gearInput,
  type Item,
  itemInput,
  orderInput,
} from '@quartermark/engine/log';
import type { Piece } from '@quartermark/engine/readiness';
import type { Shelf } from '../books/shelf.ts';
import type { EntryRow } from '../entries/read.ts';
import type { GearRecord } from './records.ts';
import { entriesOf } from './windows-of.ts';

/** A piece as the engine takes it; `problem` where something it rests on cannot be read. */
export type WorkedOut = { piece: Piece; problem: string | null };

/**
 * Works out pieces from the books of the cars they were on. Nothing of it is stored, so nothing can be
 * out of date. One that rests on something unreadable has no result; the others are not held up.
 *
 * @returns in the order of `records`
 */
export async function workOutPieces(
  shelf: Shelf,
  records: readonly GearRecord[],
): Promise<WorkedOut[]> {
  return Promise.all(records.map((record) => workOut(shelf, record)));
}

async function workOut(shelf: Shelf, record: GearRecord): Promise<WorkedOut> {
  const { row, entries } = record;
  const items = itemsOf(record);
  const parsed = gearInput.safeParse(row.body);
  // what a later schema faults is shown as it stands
  const gear: Gear = { id: row.id, gear: parsed.data ?? row.body };
  const orders = ordersOf(record);
  const piece = { gear, items: items.read, orders: orders.read };
  const unknown = (problem: string) => ({ piece: { ...piece, result: null }, problem });
  if (!parsed.success) return unknown('it cannot be read itself');
  if (items.fault !== null) return unknown(`its item ${items.fault} cannot be read`);
  if (orders.fault !== null) return unknown(`its order ${orders.fault} cannot be read`);
  const own = entriesOf(entries);
  if (own.unreadable.length > 0) return unknown(`its entry ${own.unreadable[0]} cannot be read`);
  const cars = (await Promise.all([...carsOf(entries)].map((id) => shelf.bookOf(id)))).flatMap(
    (car) => car ?? [],
  );
  for (const car of cars) if ('problem' in car) return unknown(car.problem.message);
  const result = analyseGear(
    {
      gear,
      asOf: shelf.asOf,
      zone: shelf.zone,
      items: items.read,
      cars: cars.flatMap((car) => ('book' in car ? [car.book] : [])),
      entries: own.entries,
    },
    shelf.historyOf,
  );
  return { piece: { ...piece, result }, problem: null };
}

/** What can be read of a list, and the first id of what cannot. */
type Parsed<T> = { read: T[]; fault: string | null };

function itemsOf({ items }: GearRecord): Parsed<Item> {
  const parsed = items.map(({ id, body }) => ({ id, read: itemInput.safeParse(body) }));
  return {
    read: parsed.flatMap(({ id, read }) => (read.success ? [{ id, ...read.data }] : [])),
    fault: parsed.find(({ read }) => !read.success)?.id ?? null,
  };
}

function ordersOf({ orders }: GearRecord): Parsed<BookOrder> {
  const parsed = orders.map((row) => ({ ...row, read: orderInput.safeParse(row.body) }));
  return {
    read: parsed.flatMap(({ id, itemId, read }) =>
      read.success ? [{ id, item: itemId, ...read.data }] : [],
    ),
    fault: parsed.find(({ read }) => !read.success)?.id ?? null,
  };
}

/** Cars it was ever put on, by removed entries too: services that were done there stay its own. */
function carsOf(entries: readonly EntryRow[]): Set<string> {
  return new Set(entries.flatMap(({ kind, carId }) => (kind === 'fit' && carId) || []));
}
