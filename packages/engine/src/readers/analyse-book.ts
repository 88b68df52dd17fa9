import type { Book } from '../log/book.ts';
import { type Analysis, analyseCase, sortFlags } from '../wear/index.ts';
import { bookCase } from './book-case.ts';
import { lastLevel } from './last-level.ts';

/**
 * Says what is known of one car from its book, on the book's own day. Pure: the same book gives the
 * same answer, in whatever order its entries stand.
 *
 * @param book as its schema gives it; `asOf` is the day the answer is for
 * @example canonicalJson(analyseBook(book))
 */
export function analyseBook(book: Book): Analysis {
  const analysis = analyseCase(bookCase(book));
  const level = lastLevel(book);
  return {
    ...analysis,
    flags: sortFlags([...analysis.flags, ...level.flags]),
    lastLevel: level.lastLevel,
  };
}
