import { loadBook, readCar, type Tx, UnreadableBook } from '@quartermark/db';
import type { Book } from '@quartermark/engine/log';

/** A car that a part was on: its name, and its book if that can be read. */
export type CarBook = { name: string; book: Book } | { name: string; problem: string };

/**
 * Books of the cars that are still in the garage, each read once, by id. A book that cannot be read
 * stands there with its problem, because what rests on it is then not known.
 *
 * @param today civil date in the garage's zone
 */
export async function carBooks(
  tx: Tx,
  garageId: string,
  carIds: Iterable<string>,
  today: string,
): Promise<Map<string, CarBook>> {
  const books = new Map<string, CarBook>();
  for (const carId of new Set(carIds)) {
    const car = await readCar(tx, garageId, carId);
    if (car) books.set(carId, { name: car.name, ...(await bookOf(tx, garageId, carId, today)) });
  }
  return books;
}

async function bookOf(tx: Tx, garageId: string, carId: string, today: string) {
  try {
    return { book: (await loadBook(tx, garageId, carId, today)).book };
  } catch (error) {
    if (error instanceof UnreadableBook) return { problem: error.message };
    throw error;
  }
}
