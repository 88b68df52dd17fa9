import { monthsAfter } from '../calendar/add.ts';
import { civilOf, dayNumberOf, formatDay, parseDay } from '../calendar/day-number.ts';
import { buildHistory } from '../history/build-history.ts';
import type { CarCase, CaseItem } from '../history/case.ts';
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
  return days
    .filter((day) => today.entries.some(({ date }) => date <= day))
    .flatMap((day) => saidThen(book, caseAt(today, day)));
}

function saidThen(book: Book, car: CarCase): SaidLine[] {
  const analysis = analyseHistory(car, buildHistory(car));
  // what the profile says of where the car stands is of today
  const status = carStatus(keptEntries(book.entries, car.asOf), {}, analysis.laidUp !== null);
  return saidOf(book, { ...analysis, status }).map((line) => ({ ...line, afterwards: true }));
}

/** The case as it stood on an earlier day. */
function caseAt(car: CarCase, day: string): CarCase {
  return {
    ...car,
    asOf: day,
    entries: car.entries.filter(({ date }) => date <= day),
    storage: car.storage
      .filter(({ start }) => start <= day)
      .map((window) => ({
        ...window,
        end: window.end !== null && window.end < day ? window.end : null,
      })),
    planned: [],
    items: car.items.map((item) => itemAt(item, day)),
  };
}

function itemAt(item: CaseItem, day: string): CaseItem {
  const { baseline, dueSince, triggers, ...rest } = item;
  return {
    ...rest,
    baseline: baseline !== null && baseline.date <= day ? baseline : null,
    ...(dueSince !== undefined && dueSince <= day && { dueSince }),
    ...(triggers && { triggers: triggers.filter(({ mark }) => mark.entry.date <= day) }),
  };
}
