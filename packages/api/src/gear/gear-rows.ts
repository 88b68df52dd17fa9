import {
  type EntryRow,
  type GarageRow,
  type GearRow as GearRecord,
  type ItemRow,
  listEntriesOfGear,
  listItemsOfGear,
  listOrdersOfItems,
  type OrderRow,
  type Tx,
} from '@quartermark/db';
import { analyseGear, type HistoryOf, historiesAt } from '@quartermark/engine/gear';
import { gearInput, itemInput } from '@quartermark/engine/log';
import { itemViewOf } from '../item/view-of.ts';
import { orderViewOf } from '../order/view-of.ts';
import type { GearRow } from '../views.ts';
import type { Log } from '../world.ts';
import { type CarBook, carBooks } from './car-books.ts';
import { entriesOf, fittedOn } from './windows-of.ts';

type Asked = { tx: Tx; garage: GarageRow; today: string; log: Log };

/** What a piece's row is made of. */
type Piece = {
  record: GearRecord;
  items: ItemRow[];
  orders: OrderRow[];
  entries: EntryRow[];
};
type Known = { books: Map<string, CarBook>; historyOf: HistoryOf };

/**
 * Components, equipment and people with what is known of them on a day, worked out now from the books
 * of the cars they were on. Nothing of it is stored, so nothing can be out of date. Each car's book is
 * read and its history built once, however many parts it had.
 *
 * One that rests on something unreadable is listed without its figures; the others are not held up.
 *
 * Call in a `repeatable read` transaction, or the books may be of different moments.
 */
export async function gearRows(asked: Asked, records: readonly GearRecord[]): Promise<GearRow[]> {
  const { tx, garage, today } = asked;
  const ids = records.map(({ id }) => id);
  if (ids.length === 0) return [];
  const [items, entries] = await Promise.all([
    listItemsOfGear(tx, garage.id, ids),
    listEntriesOfGear(tx, garage.id, ids),
  ]);
  const orders = await listOrdersOfItems(
    tx,
    garage.id,
    items.map(({ id }) => id),
  );
  const books = await carBooks(tx, garage.id, carsOf(entries), today);
  const known: Known = { books, historyOf: historiesAt(today) };
  return records.map((record) => {
    const own = ({ gearId }: { gearId: string | null }) => gearId === record.id;
    const ownItems = items.filter(own);
    const ofItems = ({ itemId }: OrderRow) => ownItems.some(({ id }) => id === itemId);
    const piece = { record, items: ownItems, orders: orders.filter(ofItems) };
    return rowOf(asked, { ...piece, entries: entries.filter(own) }, known);
  });
}

/** Cars it was ever put on, by removed entries too: services that were done there stay its own. */
function carsOf(entries: readonly EntryRow[]): Set<string> {
  return new Set(entries.flatMap(({ kind, carId }) => (kind === 'fit' && carId) || []));
}

function rowOf(asked: Asked, piece: Piece, known: Known): GearRow {
  const { record, items, orders, entries } = piece;
  const fitted = record.kind === 'component' ? fittedOn(entries, asked.today) : null;
  return {
    gearId: record.id,
    // what a later schema faults is shown as it stands
    gear: gearInput.safeParse(record.body).data ?? record.body,
    revision: record.revision,
    items: items.map(itemViewOf),
    orders: orders.map(orderViewOf),
    ...workedOut(asked, piece, known),
    fittedTo: fitted && {
      carId: fitted.car,
      name: known.books.get(fitted.car)?.name ?? '',
      positions: fitted.positions,
      since: fitted.start,
    },
  };
}

type Figures = Pick<GearRow, 'analysis' | 'life'>;

function workedOut(asked: Asked, piece: Piece, { books, historyOf }: Known): Figures {
  const { record, items, entries } = piece;
  const unknown = (problem: string): Figures => {
    asked.log.error({ gearId: record.id, problem }, 'a piece could not be worked out');
    return { analysis: null, life: null };
  };
  const gear = gearInput.safeParse(record.body);
  if (!gear.success) return unknown('it cannot be read itself');
  const parsed = items.map(({ id, body }) => ({ id, read: itemInput.safeParse(body) }));
  const faulty = parsed.find(({ read }) => !read.success);
  if (faulty) return unknown(`its item ${faulty.id} cannot be read`);
  const { entries: own, unreadable } = entriesOf(entries);
  if (unreadable.length > 0) return unknown(`its entry ${unreadable[0]} cannot be read`);
  const cars = [...carsOf(entries)].flatMap((id) => books.get(id) ?? []);
  for (const car of cars) if ('problem' in car) return unknown(car.problem);
  return analyseGear(
    {
      gear: { id: record.id, gear: gear.data },
      asOf: asked.today,
      zone: asked.garage.zone,
      items: parsed.flatMap(({ id, read }) => (read.success ? [{ id, ...read.data }] : [])),
      cars: cars.flatMap((car) => ('book' in car ? [car.book] : [])),
      entries: own,
    },
    historyOf,
  );
}
