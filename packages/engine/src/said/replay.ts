import { monthsAfter } from '../calendar/add.ts';
import { civilOf, dayNumberOf, formatDay, parseDay } from '../calendar/day-number.ts';
import { buildHistory } from '../history/build-history.ts';
import type { CarCase } from '../history/case.ts';
import type { Book } from '../log/book.ts';
import { carStatus, keptEntries } from '../matters/index.ts';
import { bookCase } from '../readers/book-case.ts';
import { analyseHistory } from '../wear/index.ts';
import type { SaidLine } from './result.ts';
import { saidOf } from './said-of.ts';

const MONTHS = 12;

/**
 * The first day of each of the last twelve months before a day, oldest first.
 *
 * @example replayDays('2026-06-15')[0] // '2025-07-01'
 */
export function replayDays(asOf: string): string[] {
  const { year, month, day } = civilOf(parseDay(asOf));
  const first = dayNumberOf({ year, month, day: 1 });
  const months = Array.from({ length: MONTHS }, (_, at) => at - MONTHS + (day > 1 ? 1 : 0));
  return months.map((back) => formatDay(monthsAfter(first, back)));
}

/**
 * What would have been said on earlier days, worked out afterwards from the log as it stood up to each of
 * them: entries dated later are left out, a lay-up that ended later is still open, and starting points that
 * lie later do not exist yet. Events on the calendar are left out, since nobody knows which were on it then.
 * Items and their limits are those of today. Days before the first entry say nothing.
 *
 * @param book as of today
 * @param days civil dates, in any order
 */
export function replay(book: Book, days: readonly string[]): SaidLine[] {
  const today = bookCase(book);
  // where the car stood follows from these alone: what its profile says of that is of today
  const handovers = book.entries.filter(({ kind }) => kind === 'handover');
  return days
    .map((day) => caseAt(today, day))
    .filter(({ entries }) => entries.length > 0)
    .flatMap((car) => {
      const analysis = analyseHistory(car, buildHistory(car));
      const status = carStatus(keptEntries(handovers, car.asOf), {}, analysis.laidUp !== null);
      return saidOf(book, { ...analysis, status }).map((line) => ({ ...line, afterwards: true }));
    });
}

/** The case as it stood on an earlier day; what is dated later in its items counts for nothing anyway. */
function caseAt(car: CarCase, day: string): CarCase {
  return {
    ...car,
    asOf: day,
    // what lies later would be set aside anyway, and need not be put in order first
    entries: car.entries.filter(({ date }) => date <= day),
    storage: car.storage
      .filter(({ start }) => start <= day)
      .map((window) => ({
        ...window,
        end: window.end !== null && window.end < day ? window.end : null,
      })),
    planned: [],
  };
}
