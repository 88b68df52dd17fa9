import {
  type GarageRow,
  type GearRow as GearRecord,
  type ItemRow,
  listEntriesOfGear,
  listItemsOfGear,
  loadBook,
  readCar,
  type Tx,
} from '@quartermark/db';
import { analyseGear, historiesAt } from '@quartermark/engine/gear';
import { type Book, gearInput, itemInput } from '@quartermark/engine/log';
import { itemViewOf } from '../item/view-of.ts';
import type { GearRow } from '../views.ts';
import { entriesOf } from './windows-of.ts';

type Asked = { tx: Tx; garage: GarageRow; today: string };

/**
 * Components, equipment and people with what is known of them on a day, worked out now from the books
 * of the cars they were on. Nothing of it is stored, so nothing can be out of date. Each car's book is
 * read and its history built once, however many parts it had.
 *
 * Call in a `repeatable read` transaction, or the books may be of different moments.
 */
export async function gearRows(asked: Asked, pieces: readonly GearRecord[]): Promise<GearRow[]> {
  const { tx, garage, today } = asked;
  const ids = pieces.map(({ id }) => id);
  if (ids.length === 0) return [];
  const [items, entries] = await Promise.all([
    listItemsOfGear(tx, garage.id, ids),
    listEntriesOfGear(tx, garage.id, ids),
  ]);
  const cars = new Set(entries.flatMap(({ kind, carId }) => (kind === 'fit' && carId) || []));
  const books = await booksOf(asked, [...cars]);
  const historyOf = historiesAt(today);
  return pieces.map((piece) => {
    const own = entries.filter(({ gearId }) => gearId === piece.id);
    const row = rowOf(
      piece,
      items.filter(({ gearId }) => gearId === piece.id),
    );
    const onCars = own.flatMap(({ kind, carId }) => (kind === 'fit' && carId) || []);
    const answer = analyseGear(
      {
        gear: { id: piece.id, gear: row.gear },
        asOf: today,
        zone: garage.zone,
        items: row.items.map(({ id, item }) => ({ id, ...item })),
        cars: [...new Set(onCars)].flatMap((id) => books.get(id) ?? []),
        entries: entriesOf(own),
      },
      historyOf,
    );
    const fitted = answer.life?.fitted ?? null;
    return {
      ...row,
      ...answer,
      fittedTo: fitted && {
        carId: fitted.car,
        name: books.get(fitted.car)?.car.name ?? '',
        positions: fitted.positions,
        since: fitted.start,
      },
    };
  });
}

/** Books of cars that are still in the garage, by id. */
async function booksOf(
  { tx, garage, today }: Asked,
  carIds: readonly string[],
): Promise<Map<string, Book>> {
  const books = new Map<string, Book>();
  for (const carId of carIds)
    if (await readCar(tx, garage.id, carId))
      books.set(carId, (await loadBook(tx, garage.id, carId, today)).book);
  return books;
}

function rowOf(piece: GearRecord, items: readonly ItemRow[]) {
  return {
    gearId: piece.id,
    gear: gearInput.parse(piece.body),
    revision: piece.revision,
    items: items.map(itemViewOf).map((view) => ({ ...view, item: itemInput.parse(view.item) })),
  };
}
