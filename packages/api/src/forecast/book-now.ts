import {
  type GarageRow,
  loadBook,
  readCar,
  readGarage,
  type Tx,
  UnreadableBook,
} from '@quartermark/db';
import type { Book } from '@quartermark/engine/log';
import { garageViewOf } from '../garage/view-of.ts';
import { notFoundHere } from '../refused.ts';
import type { GarageView } from '../views.ts';
import type { World } from '../world.ts';

export type BookNow = {
  row: GarageRow;
  garage: GarageView;
  name: string;
  unit: 'km' | 'mi';
  /** null: a stored part of it cannot be read; half a log would give dates that are too late */
  book: Book | null;
};

/**
 * A car's book as it stands today. Call it in a `repeatable read` transaction.
 *
 * @throws Refused `notFound`
 */
export async function bookNow(
  { clock, log }: World,
  tx: Tx,
  { garageId, carId }: { garageId: string; carId: string },
): Promise<BookNow> {
  const [row, car] = await Promise.all([readGarage(tx, garageId), readCar(tx, garageId, carId)]);
  if (!row || !car) throw notFoundHere('car', 'carId');
  const garage = garageViewOf(row, clock.now());
  const { name, unit } = car;
  try {
    const { book } = await loadBook(tx, garageId, carId, garage.today);
    return { row, garage, name, unit, book };
  } catch (error) {
    if (!(error instanceof UnreadableBook)) throw error;
    log.error({ garageId, carId, problem: error.message }, 'a book could not be read');
    return { row, garage, name, unit, book: null };
  }
}
