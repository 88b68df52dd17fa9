import type { Book } from '../../log/book.ts';
import type { Entry } from '../../log/entry.ts';
import { sortEntries } from '../../log/sort-entries.ts';
import type { CarOil } from '../../oil/index.ts';
import type { OilDrive } from './oil-amount.ts';

/** Classes of use that the ledger has a rate for. */
export type RateClass = 'road' | 'hard' | 'run';

/**
 * The class of a drive whose rate was never measured on this car; null where all of them were.
 *
 * A rate is measured once the ledger can say something, the class was logged, and a level was read by the
 * car's own procedure after it was: before that it is what common practice assumes.
 */
export function notMeasured(book: Book, oil: CarOil, drive: OilDrive): RateClass | null {
  if (oil.status === 'none') return 'road';
  const looks = sortEntries(book.entries.filter((it) => !it.removed && it.on <= book.asOf));
  if (drive.hardKm > 0 && (oil.hardRate.fromPrior || !seenSince(looks, oil, isHard))) return 'hard';
  const run = oil.stripPerRun;
  if (drive.runs > 0 && (run === undefined || run.fromPrior || !seenSince(looks, oil, isStrip)))
    return 'run';
  return null;
}

const isHard = ({ kind }: Entry) => kind === 'session';
const isStrip = ({ kind }: Entry) => kind === 'strip';

/** Whether a level was read by procedure after the first use of a class. */
function seenSince(
  sorted: readonly Entry[],
  { offProcedure }: CarOil,
  isUse: (entry: Entry) => boolean,
): boolean {
  const first = sorted.findIndex(isUse);
  return sorted.some((entry, at) => at > first && tells(entry) && !offProcedure.includes(entry.id));
}

function tells(entry: Entry): boolean {
  if (entry.kind === 'oilCheck') return true;
  if (entry.kind !== 'oilTopUp') return false;
  return entry.toMax === true || entry.levelBefore !== undefined || entry.levelAfter !== undefined;
}
