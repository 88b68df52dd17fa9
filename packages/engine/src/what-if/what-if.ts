import { type DueLine, dueLinesOf } from '../display/due-line.ts';
import type { Book } from '../log/book.ts';
import { analyseBook } from '../readers/analyse-book.ts';
import type { Analysis } from '../wear/result.ts';
import { type AddedUse, addedId, plannedOf } from './added-use.ts';
import { type Outlook, outlookOf } from './outlook.ts';

/** One item of a car, as it stands and with what was added. */
export type WhatIfLine = {
  id: string;
  name: string;
  before: DueLine;
  after: DueLine;
  /** its state, its likely day or the day it could be as early as is another */
  changed: boolean;
};

export type WhatIf = {
  asOf: string;
  /** the car stands in a lay-up today */
  laidUp: boolean;
  /** in the book's order */
  lines: WhatIfLine[];
  /** of each line that was added, in their order */
  outlooks: Outlook[];
};

/**
 * What would become of a car's dates if it did something more. Nothing of it is kept anywhere.
 *
 * @param added each counted as attended for certain, beside what the book has planned
 * @example whatIf(book, [{ sort: 'circuit', start: '2026-06-20', use: { sessions: 6 } }])
 */
export function whatIf(book: Book, added: readonly AddedUse[]): WhatIf {
  const more: Book = { ...book, planned: [...book.planned, ...added.map(plannedOf)] };
  const ids = added.map((_, index) => addedId(index));
  const before = analyseBook(book);
  const after = added.length === 0 ? before : analyseBook(more, { toEvents: ids });
  return {
    asOf: book.asOf,
    laidUp: before.laidUp !== null,
    lines: linesOf(book, before, after),
    outlooks: ids.map((id) => outlookOf(more, after, id)),
  };
}

function linesOf(book: Book, before: Analysis, after: Analysis): WhatIfLine[] {
  const then = new Map(dueLinesOf(book, after).map((line) => [line.id, line]));
  return dueLinesOf(book, before).map((line) => {
    const now = then.get(line.id) ?? line;
    const { id, name } = line;
    return { id, name, before: line, after: now, changed: reads(line) !== reads(now) };
  });
}

/** What a person reads of it. */
function reads({ state, dates: { early, likely }, readingNeeded }: DueLine): string {
  return JSON.stringify([state, early, likely, readingNeeded ?? false]);
}
