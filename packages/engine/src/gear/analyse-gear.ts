import { parseDay } from '../calendar/day-number.ts';
import { ENGINE_VERSION } from '../engine-version.ts';
import { buildHistory, type History } from '../history/build-history.ts';
import type { CaseItem } from '../history/case.ts';
import type { Book } from '../log/book.ts';
import type { Entry } from '../log/entry.ts';
import { bookCase, caseItem } from '../readers/book-case.ts';
import { analyseItem } from '../wear/analyse-item.ts';
import { type LastService, lastServices } from '../wear/last-service.ts';
import type { Ledger } from '../wear/ledger.ts';
import { sortFlags } from '../wear/sort-flags.ts';
import { componentLife } from './component-life.ts';
import { findAssumedFitOrders, findSetsNotOn } from './find-misfits.ts';
import { type Fits, foldFits } from './fit-windows.ts';
import { type LifeStart, lifeStart } from './life-start.ts';
import { mergeTimelines } from './merge-timelines.ts';
import { ownEntries, placeOwn } from './own-entries.ts';
import type { Part } from './part.ts';
import { partLedger, placeWindows } from './part-ledger.ts';
import type { GearAnalysis, GearBook } from './result.ts';
import { entriesWhileFitted } from './while-fitted.ts';

/** Gives a car's history, building it the first time it is asked for. */
export type HistoryOf = (book: Book) => History;

/**
 * Histories on a day, each built once, for callers that ask about many parts of the same cars.
 *
 * @param asOf civil date, which counts instead of the books' own
 */
export function historiesAt(asOf: string): HistoryOf {
  const built = new Map<Book, History>();
  return (book) => {
    const known = built.get(book);
    if (known !== undefined) return known;
    const history = buildHistory(bookCase({ ...book, asOf }));
    built.set(book, history);
    return history;
  };
}

/**
 * Says what is known of a component, a piece of equipment or a person: its items judged by its own
 * use, and for a component its life. A component's use is what its cars did while it was fitted to
 * them. Pure: shuffled entries give the same answer.
 *
 * A part that came new, or was made new by a fit that says so, has its items counted from then; of a
 * used one the amounts are a lower bound unless a starting point says that the history is complete.
 *
 * @param historyOf histories of the cars on the same day; hand one in to share them between parts
 * @throws RangeError for a date that does not exist
 * @example analyseGear({ gear, asOf: '2026-06-15', zone, items, cars, entries }).life?.sessions
 */
export function analyseGear(
  book: GearBook,
  historyOf: HistoryOf = historiesAt(book.asOf),
): GearAnalysis {
  const { gear, asOf, cars } = book;
  const own = ownEntries(book);
  const isComponent = gear.gear.kind === 'component';
  const fits = foldFits(isComponent ? own.entries : []);
  const items = caseItems(book, own.entries, fits);
  const histories = new Map(cars.map((it) => [it.car.id, historyOf(it)]));
  const merged = mergeTimelines(histories, placeOwn(own, book, items, histories.values()));
  const windows = placeWindows(fits, merged);
  const start = isComponent
    ? lifeStart({ gear: gear.gear, asOf, fits: fits.entries, merged })
    : null;
  const ledger: Ledger = {
    ...partLedger(merged, parseDay(asOf), windows, start),
    // nothing counts what a tool or a person does
    ...(!isComponent && { isKnown: () => false }),
  };
  const services = servicesOf(ledger, start);
  const part: Part = { book, own: own.entries, fits, windows, merged, ledger, start };
  return {
    analysis: {
      asOf,
      engineVersion: ENGINE_VERSION,
      items: items.map((item) => analyseItem(item, ledger, services(item.id))),
      flags: sortFlags([
        ...own.flags,
        ...fits.flags,
        ...findSetsNotOn(gear.id, cars, windows, merged, asOf),
        ...findAssumedFitOrders(fits.entries, windows),
      ]),
    },
    life: componentLife(part),
  };
}

/** Items with what makes them due at once: about the gear itself, or on a car while it was there. */
function caseItems(
  { items, cars, asOf }: GearBook,
  own: readonly Entry[],
  { windows }: Fits,
): CaseItem[] {
  const there = entriesWhileFitted(windows, cars, asOf);
  const ids = new Set(there.map(({ id }) => id));
  const happened = [...there, ...own.filter(({ id }) => !ids.has(id))];
  return items.map((item) => caseItem(item, happened));
}

/** The last service of an item; a part made new since counts from then. */
function servicesOf(ledger: Ledger, start: LifeStart | null): (item: string) => LastService | null {
  const last = lastServices(ledger.timeline);
  return (item) => {
    const service = last.get(item) ?? null;
    if (start === null || (service !== null && service.position >= start.position)) return service;
    return start.day === null ? service : madeNew(start.position, start.day, item);
  };
}

function madeNew(position: number, day: NonNullable<LifeStart['day']>, item: string): LastService {
  return {
    position,
    day: day.number,
    entry: {
      type: 'service',
      id: null,
      date: day.on,
      minute: null,
      recorded: null,
      kind: 'fit',
      canonical: '',
      items: [item],
      odometerKm: null,
      hourMeterH: null,
      complete: false,
    },
  };
}
