import { formatDay, parseDay } from '../calendar/day-number.ts';
import { buildHistory, type History } from '../history/build-history.ts';
import type { CaseItem } from '../history/case.ts';
import type { Book } from '../log/book.ts';
import { keptEntries } from '../matters/kept-entries.ts';
import { bookCase } from '../readers/book-case.ts';
import type { LastService } from '../wear/last-service.ts';
import { type Interval, type IntervalEnd, intervalEnd } from './interval.ts';
import type { JudgedLine, SaidLine } from './result.ts';
import { limitsText } from './said-of.ts';

/**
 * Holds what was said of a car against what its log tells now. Pure: the same book and lines give the
 * same verdicts, in the order of the lines. Lines of items that are no longer on the list are left out.
 *
 * - reached between the early and the late day (both inclusive): `inside`; before: `earlier`. An early day
 *   that is the day it was said says "perhaps due already", so whatever lies before it is inside as well
 * - reached after the late day, or not reached though the late day has passed: `later`
 * - done before a limit was reached, no later than the late day: `doneFirst`
 * - neither, up to the late day: `open`
 * - the log does not hold the use it would take to tell: `notKnown`
 * - other limits, or another service to count from, than it was said of: `changed`
 *
 * @param book as of today; its entries may have been amended since
 * @param lines of this car, in any order
 */
export function judgeSaid(book: Book, lines: readonly SaidLine[]): JudgedLine[] {
  const car = bookCase(book);
  const history = buildHistory(car);
  const last = lastDayHere(book, history);
  const limits = new Map(book.items.map((item) => [item.id, limitsText(item)]));
  const items = new Map(car.items.map((item) => [item.id, item]));
  const services = servicesByItem(history);
  const ends = new Map<string, IntervalEnd>();
  const endOf = (item: CaseItem, interval: Interval) => {
    const key = `${item.id} ${interval.from?.position ?? ''}`;
    const known = ends.get(key) ?? intervalEnd(item, history, interval);
    ends.set(key, known);
    return known;
  };
  return lines.flatMap((said) => {
    const item = items.get(said.item);
    if (item === undefined) return [];
    const interval = intervalOf(said, services.get(said.item) ?? [], last);
    const { limits: then, ...plain } = said;
    if (interval === null || limits.get(said.item) !== then) return changed(plain);
    return judge(plain, interval, endOf(item, interval), history.asOfDay);
  });
}

function servicesByItem({ timeline }: History): Map<string, LastService[]> {
  const found = new Map<string, LastService[]>();
  timeline.forEach(({ entry, day }, position) => {
    if (entry.type !== 'service') return;
    for (const item of entry.items) {
      const own = found.get(item) ?? [];
      found.set(item, [...own, { entry, day, position }]);
    }
  });
  return found;
}

/** The interval it was said of; null if the log has another by now. */
function intervalOf(
  said: SaidLine,
  services: readonly LastService[],
  lastDay: number,
): Interval | null {
  const saidDay = parseDay(said.saidOn);
  const sinceDay = said.since === null ? null : parseDay(said.since);
  const from = services.findLast(({ day }) => day === sinceDay) ?? null;
  if (sinceDay !== null && from === null) return null;
  const next = services.find(({ position }) => position > (from?.position ?? -1)) ?? null;
  // a service came to light that was done before it was said
  if (next !== null && next.day < saidDay) return null;
  return { from, next, endDay: Math.min(lastDay, next?.day ?? lastDay) };
}

/** A car that went away or was sold has no use here after that day. */
function lastDayHere({ entries, asOf }: Book, { asOfDay }: History): number {
  const handovers = entries.filter(({ kind }) => kind === 'handover');
  const handover = keptEntries(handovers, asOf).at(-1);
  const left =
    handover?.kind === 'handover' && (handover.what === 'sold' || handover.what === 'lent');
  return left ? Math.min(asOfDay, parseDay(handover.on)) : asOfDay;
}

function judge(
  said: JudgedLine['said'],
  { next, endDay }: Interval,
  { reachedDay, whole, knownDay }: IntervalEnd,
  asOfDay: number,
): JudgedLine {
  const likely = parseDay(said.likely);
  // an early day that is the day it was said says: perhaps due already, since whenever
  const early = said.early <= said.saidOn ? Number.NEGATIVE_INFINITY : parseDay(said.early);
  const late = said.late === null ? Number.POSITIVE_INFINITY : parseDay(said.late);
  const line = {
    said,
    reachedOn: reachedDay === null ? null : formatDay(reachedDay),
    doneOn: next === null ? null : formatDay(next.day),
    knownUntil: formatDay(knownDay),
    ...NO_VERDICT,
  };
  // by what is missing it may have been earlier; a verdict on the early side alone would be one-sided
  if (!whole) return { ...line, outcome: 'notKnown' };
  if (reachedDay !== null) {
    // a day of the calendar passed, but an amount nobody read may have come before it
    const firstDay = Math.min(reachedDay, knownDay + 1);
    const daysOff = reachedDay - likely;
    if (reachedDay < early)
      return { ...line, outcome: 'earlier', daysOff, daysOutside: early - reachedDay };
    if (firstDay > late)
      return { ...line, outcome: 'later', daysOff, daysOutside: reachedDay - late };
    if (firstDay < early || reachedDay > late) return { ...line, outcome: 'notKnown' };
    return { ...line, outcome: 'inside', daysOff, daysOutside: 0 };
  }
  if (knownDay > late) {
    const daysOff = knownDay - likely;
    return { ...line, outcome: 'later', daysOff, daysOutside: knownDay - late, atLeast: true };
  }
  if (next !== null) return { ...line, outcome: knownDay >= endDay ? 'doneFirst' : 'notKnown' };
  return { ...line, outcome: endDay > late || endDay < asOfDay ? 'notKnown' : 'open' };
}

const NO_VERDICT = { daysOff: null, daysOutside: null, atLeast: false } as const;

function changed(said: JudgedLine['said']): JudgedLine {
  const { saidOn: knownUntil } = said;
  return { said, outcome: 'changed', reachedOn: null, doneOn: null, knownUntil, ...NO_VERDICT };
}
