import { buildHistory } from '../history/build-history.ts';
import type { Book } from '../log/book.ts';
import { carStatus, keptEntries, mattersOf } from '../matters/index.ts';
import { type Analysis, type Asked, analyseLedger, ledgerOf, sortFlags } from '../wear/index.ts';
import { bookCase } from './book-case.ts';
import { bookOil } from './book-oil.ts';
import { lastLevel } from './last-level.ts';
import { withoutAnswered } from './without-answered.ts';

/**
 * Says what is known of one car from its book, on the book's own day. Pure: the same book gives the
 * same answer, in whatever order its entries stand.
 *
 * @param book as its schema gives it; `asOf` is the day the answer is for
 * @example canonicalJson(analyseBook(book))
 */
export function analyseBook(book: Book, asked: Asked = {}): Analysis {
  const car = bookCase(book);
  const history = buildHistory(car);
  const ledger = ledgerOf(car, history, asked);
  const analysis = analyseLedger(car, history, ledger);
  const level = lastLevel(book);
  const status = carStatus(
    keptEntries(book.entries, book.asOf),
    book.car.profile,
    analysis.laidUp !== null,
  );
  const oil = bookOil(book, history, ledger.forecasts, status === 'inUse');
  return {
    ...analysis,
    oil,
    flags: sortFlags(withoutAnswered([...analysis.flags, ...level.flags], book.entries, book.asOf)),
    lastLevel: level.lastLevel,
    status,
    matters: mattersOf(book, history),
  };
}
