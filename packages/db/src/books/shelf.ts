import { type HistoryOf, historiesAt } from '@quartermark/engine/gear';
import type { Book } from '@quartermark/engine/log';
import { type CarRow, readCar } from '../cars/read.ts';
import type { Tx } from '../connect.ts';
import { loadBook } from './load.ts';
import { UnreadableBook } from './unreadable-book.ts';

/** A car that is still in the garage, and its book if that can be read. */
export type CarBook = { car: CarRow } & (
  | { book: Book; inputVersion: number }
  | { problem: UnreadableBook }
);

/** Books of a garage's cars on one day, each read and its history built once, however often it is asked for. */
export type Shelf = {
  tx: Tx;
  garageId: string;
  /** civil date in the garage's zone */
  asOf: string;
  zone: string;
  historyOf: HistoryOf;
  /** null: the car is not in the garage (any more) */
  bookOf(carId: string): Promise<CarBook | null>;
};

/**
 * An empty shelf. A book that cannot be read stands there with its problem, because what rests on it is
 * then not known. Call in a `repeatable read` transaction, or the books may be of different moments.
 */
export function shelfOf(tx: Tx, garage: { id: string; zone: string }, asOf: string): Shelf {
  const read = new Map<string, Promise<CarBook | null>>();
  const { id: garageId, zone } = garage;
  return {
    tx,
    garageId,
    asOf,
    zone,
    historyOf: historiesAt(asOf),
    bookOf(carId) {
      const known = read.get(carId) ?? readBook(tx, garageId, carId, asOf);
      read.set(carId, known);
      return known;
    },
  };
}

async function readBook(
  tx: Tx,
  garageId: string,
  carId: string,
  asOf: string,
): Promise<CarBook | null> {
  const car = await readCar(tx, garageId, carId);
  if (!car) return null;
  try {
    return { car, ...(await loadBook(tx, garageId, carId, asOf)) };
  } catch (error) {
    if (error instanceof UnreadableBook) return { car, problem: error };
    throw error;
  }
}
