import type { Book } from '../log/book.ts';
import { analyseBook } from '../readers/analyse-book.ts';
import { type Outlook, outlookOf } from './outlook.ts';

/**
 * What each of some events to come means for a car. Use that the calendar gives counts; of an event
 * without any only its days do.
 *
 * @param events that are not over; each is taken as attended, the book's others keep their chances
 */
export function eventOutlooks(
  book: Book,
  events: readonly { id: string; start: string; end: string }[],
): Outlook[] {
  const planned = new Set(book.planned.map(({ id }) => id));
  const analysis = analyseBook(book, {
    toEvents: events.filter(({ id }) => planned.has(id)).map(({ id }) => id),
    toDays: events.filter(({ id }) => !planned.has(id)),
  });
  return events.map(({ id }) => outlookOf(book, analysis, id));
}
