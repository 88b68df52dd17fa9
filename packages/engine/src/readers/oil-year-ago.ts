import { addMonths } from '../calendar/add.ts';
import { buildHistory } from '../history/index.ts';
import type { Book } from '../log/book.ts';
import { answerOil, type OilAnswer } from '../oil/index.ts';
import { bookCase } from './book-case.ts';
import { bookLedger, loggedUse } from './book-oil.ts';

/** What the ledger said, or would have said, of a car's oil on the same civil date a year before. */
export type OilYearAgo = { on: string; answer: OilAnswer };

/**
 * The oil of a car a year before the day of its book, by the entries dated until then, as they stand now: what
 * was written late or put right since counts. The last day of February goes with the 28th.
 *
 * @returns null where nothing of its oil is on record from then
 */
export function oilYearAgo(book: Book): OilYearAgo | null {
  const on = addMonths(book.asOf, -12);
  const then = { ...book, asOf: on };
  const ledger = bookLedger(then, buildHistory(bookCase(then)));
  if (!ledger.folded.state.informed) return null;
  const today = { drive: ledger.rest, distanceVarianceKm2: 0, inUse: true };
  return { on, answer: answerOil(ledger.folded.state, today, loggedUse(ledger)) };
}
