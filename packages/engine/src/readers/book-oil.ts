import { parseDay } from '../calendar/day-number.ts';
import { lookAhead } from '../forecast/chance-reached.ts';
import type { Forecasts } from '../forecast/forecasts.ts';
import type { Contribution, History } from '../history/index.ts';
import { placeOfMark } from '../history/placed.ts';
import type { Book } from '../log/book.ts';
import type { Entry, StickLevel } from '../log/entry.ts';
import { volumeL } from '../log/quantity.ts';
import { minuteOfDay, sortEntries } from '../log/sort-entries.ts';
import { isOnStick } from '../log/stick.ts';
import { markOf } from '../matters/mark-of.ts';
import {
  answerOil,
  type CarOil,
  type Drive,
  type Folded,
  foldLedger,
  type OilEvent,
  type OilHappening,
  type OilOperation,
  type RawLevel,
  type StickCar,
  type StickCondition,
  toOperations,
  USUAL_PRIORS,
} from '../oil/index.ts';
import { oilLooks } from './oil-looks.ts';

/** Where the span is not known. The commonest of passenger cars, common practice, no source. */
const ASSUMED_SPAN_L = 1;
/** "Over MAX" without a number. */
const OVER_LEVEL = 1.25;

/** The ledger of a book, run over all that is on record. */
export type BookLedger = {
  stick: StickCar;
  events: OilEvent[];
  operations: OilOperation[];
  folded: Folded;
  /** what was driven after the last event, as far as it is known */
  rest: Drive;
  /** km since the log began */
  totalKm: number;
};

export function stickCarOf({ car }: Book): StickCar {
  const { profile } = car;
  return {
    spanL: profile.oilSpanL ?? ASSUMED_SPAN_L,
    capacityL: profile.oilCapacityL ?? null,
    drySump: profile.sump === 'dry',
    procedure: profile.dipstick ?? null,
  };
}

/**
 * Keeps the oil ledger of a book. Distances are those of the history: what the odometer shows beyond logged
 * uses is road, autocross counts as circuit, a drag-strip day is its runs.
 *
 * @param history of the same book
 */
export function bookLedger(book: Book, history: History): BookLedger {
  const stick = stickCarOf(book);
  const walk = new Walk(history);
  const places = new Map(history.timeline.map(({ entry }, at) => [entry.id, at]));
  const events = oilEntries(book, stick.spanL).map(({ entry, happening }): OilEvent => {
    // a use with an odometer ends at its reading, the last place it has
    const place = places.get(entry.id) ?? placeOfMark(history.timeline, markOf(entry));
    const { drive, totalKm } = walk.to(parseDay(entry.on), place);
    return { entry: entry.id, totalKm, drive, condition: conditionOf(entry), happening };
  });
  const operations = toOperations(stick, events);
  const folded = foldLedger(stick.spanL, USUAL_PRIORS, operations);
  const { drive: rest, totalKm } = walk.to(history.asOfDay, Number.POSITIVE_INFINITY);
  return { stick, events, operations, folded, rest, totalKm };
}

/**
 * What the ledger says of a car today.
 *
 * @param forecasts of the same car: what was driven since the last reading
 * @param inUse false for a car that is laid up, in pieces or away: nobody looks every week
 */
export function bookOil(
  book: Book,
  history: History,
  forecasts: Forecasts,
  inUse: boolean,
): CarOil {
  const ledger = bookLedger(book, history);
  const { stick, folded, rest } = ledger;
  const ahead = forecasts.reachOf({ measure: 'km', weights: {} }, null);
  const unread = lookAhead(ahead, 0);
  const today = {
    drive: { ...rest, road: rest.road + unread.mean / 1000 },
    distanceVarianceKm2: unread.variance,
    inUse,
  };
  const answer = answerOil(folded.state, today, loggedUse(ledger));
  return {
    ...answer,
    ...oilLooks(book, history, { answer, ledger, ahead, inUse }),
    spanL: stick.spanL,
    spanAssumed: book.car.profile.oilSpanL === undefined,
  };
}

/** Which classes were ever logged, so that what was only assumed of them is never shown. */
export function loggedUse({ events }: BookLedger): { circuit: boolean; strip: boolean } {
  return {
    circuit: events.some(({ drive }) => drive.circuit > 0),
    strip: events.some(({ drive }) => drive.runs > 0),
  };
}

function conditionOf(entry: Entry): StickCondition | null {
  const { kind } = entry;
  const looks = kind === 'oilCheck' || kind === 'oilTopUp' || kind === 'oilChange';
  return looks ? (entry.condition ?? null) : null;
}

type Told = { entry: Entry; happening: OilHappening };

/** Entries that cut a drive, in order; those of one moment by odometer, or uses first. */
function oilEntries(book: Book, spanL: number): Told[] {
  const kept = book.entries.filter((entry) => !entry.removed && entry.on <= book.asOf);
  const oilItems = new Set(book.items.flatMap(({ id, role }) => (role === 'engineOil' ? id : [])));
  const told = sortEntries(kept).flatMap((entry): Told[] => {
    const happening = happeningOf(entry, spanL, oilItems);
    return happening === null ? [] : [{ entry, happening }];
  });
  const blocks: Told[][] = [];
  for (const one of told) {
    const block = blocks.at(-1);
    if (block?.[0] !== undefined && momentOf(block[0].entry) === momentOf(one.entry))
      block.push(one);
    else blocks.push([one]);
  }
  return blocks.flatMap(usesFirst);
}

const momentOf = (entry: Entry) => `${entry.on} ${minuteOfDay(entry) ?? 720}`;

/** Where not all of a moment show an odometer, what was driven comes before what was read. */
function usesFirst(block: Told[]): Told[] {
  if (block.every(({ entry }) => entry.odometer !== undefined)) return block;
  const first = ({ happening }: Told) => (happening.is === 'use' ? 0 : 1);
  return block.toSorted((a, b) => first(a) - first(b) || a.entry.recorded - b.entry.recorded);
}

function happeningOf(
  entry: Entry,
  spanL: number,
  oilItems: ReadonlySet<string>,
): OilHappening | null {
  const level = (read: StickLevel | undefined) =>
    read === undefined ? null : rawLevel(read, spanL);
  switch (entry.kind) {
    case 'drive':
    case 'session':
    case 'strip':
      return { is: 'use' };
    case 'oilCheck': {
      const read = level(entry.level);
      if (read === null) return null;
      const resolution = entry.level.how === 'fraction' ? (entry.level.step ?? null) : null;
      return { is: 'reading', level: read, resolution, poor: false };
    }
    case 'oilTopUp':
      return {
        is: 'topUp',
        volumeL: entry.volume === undefined ? null : volumeL(entry.volume),
        filledToMax: entry.toMax ?? false,
        before: level(entry.levelBefore),
        after: level(entry.levelAfter),
      };
    case 'oilChange':
      return { is: 'change', after: level(entry.levelAfter) };
    case 'service':
      return entry.items.some((id) => oilItems.has(id)) ? { is: 'change', after: null } : null;
    case 'repair':
      return entry.affectsOilUse ? { is: 'repair' } : null;
    case 'odometer':
    case 'fuel':
    case 'fluid':
    case 'inspection':
    case 'measure':
    case 'fit':
    case 'wheels':
    case 'finding':
    case 'incident':
    case 'layUp':
    case 'wakeUp':
    case 'meterReplaced':
    case 'labReport':
    case 'handover':
    case 'answer':
    case 'note':
      return null;
  }
}

/** Null where litres from MAX cannot be a level of this stick. */
function rawLevel(read: StickLevel, spanL: number): RawLevel | null {
  switch (read.how) {
    case 'none':
      return 'none';
    case 'over':
      return OVER_LEVEL;
    case 'fraction':
      return read.fraction;
    case 'fromMax': {
      const fraction = 1 + read.litres / spanL;
      return isOnStick(fraction) ? fraction : null;
    }
  }
}

/** Walks along the use of a history, and gives what was driven from one place to the next. */
class Walk {
  readonly #history: History;
  #next = 0;
  #totalKm = 0;

  constructor(history: History) {
    this.#history = history;
  }

  /** The shares of later days lie half a step before the next entry, so that a place alone does not tell. */
  to(day: number, position: number): { drive: Drive; totalKm: number } {
    const { contributions } = this.#history;
    const drive = { road: 0, circuit: 0, runs: 0 };
    for (; this.#next < contributions.length; this.#next += 1) {
      const it = contributions[this.#next] as Contribution;
      if (it.day > day || it.position > position) break;
      this.#totalKm += it.distanceKm;
      const runs = this.#runsOf(it);
      if (it.useClass === 'circuit' || it.useClass === 'autocross')
        drive.circuit += it.distanceKm / 1000;
      else if (runs > 0) drive.runs += runs;
      else drive.road += it.distanceKm / 1000;
    }
    return { drive, totalKm: this.#totalKm };
  }

  #runsOf({ useClass, source, launches }: Contribution): number {
    if (useClass !== 'strip') return 0;
    const entry = this.#history.timeline[source]?.entry;
    return entry?.type === 'use' ? (entry.passes ?? launches) : launches;
  }
}
