import { buildHistory } from '../history/index.ts';
import type { Book } from '../log/book.ts';
import { pastLevels, USUAL_PRIORS } from '../oil/index.ts';
import { bookCase } from './book-case.ts';
import { bookLedger } from './book-oil.ts';

/** One entry's part in the oil of a car. Litres from MAX, negative below; km since the log began. */
export type OilPastEntry = {
  entry: string | number;
  totalKm: number;
  /** driven since the entry before: thousands of km, and drag-strip runs */
  drive: { road: number; circuit: number; runs: number };
  /** the likely level before and after what happened there, in the light of the whole log */
  before: { mean: number; sd: number };
  after: { mean: number; sd: number };
  /** probability that the rate had risen, as of then */
  riseProbability: number;
};

/**
 * The past of a car's oil, entry by entry. Costs a run of the ledger and a smoother: ask for it where it is shown.
 *
 * @param book as its schema gives it; entries after its `asOf` do not count
 */
export function oilPast(book: Book): OilPastEntry[] {
  const history = buildHistory(bookCase(book));
  const { stick, events, operations, folded } = bookLedger(book, history);
  const levels = pastLevels(stick.spanL, USUAL_PRIORS, operations, folded.state.bank);
  return events.flatMap(({ entry, totalKm, drive }, at) => {
    const [level, rise] = [levels[at], folded.rises[at]];
    if (level === undefined || rise === undefined) return [];
    const { before, after } = level;
    return { entry, totalKm, drive, before, after, riseProbability: rise.riseProbability };
  });
}
