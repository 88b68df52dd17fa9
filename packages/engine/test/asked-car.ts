import type { Book } from '../src/log/index.ts';
import type { CarAsked, SaidIn } from '../src/readiness/asked.ts';

/** A car with nothing beside its book. */
export function askedCar(book: Book, saidIn: SaidIn = { distance: 'km', volume: 'l' }): CarAsked {
  return { book, parts: [], drivers: [], past: [], acceptances: [], saidIn };
}
