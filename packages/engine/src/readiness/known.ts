import { addDays, daysBetween } from '../calendar/add.ts';
import { type Amounts, deriveAmounts } from '../history/derive-amounts.ts';
import type { Book, PlannedEvent } from '../log/book.ts';
import type { EventInput } from '../log/event.ts';
import { plannedEventOf, USE_OF_SORT } from '../log/planned-event.ts';
import { distanceKm } from '../log/quantity.ts';
import type { ReadyFor, Requirements } from '../log/requirements.ts';
import { analyseBook } from '../readers/analyse-book.ts';
import type { Analysis } from '../wear/result.ts';
import type { CarAsked, EventAsked } from './asked.ts';
import { isHardUse } from './usual-requirements.ts';

/** What the rules judge by. */
export type Known = {
  car: CarAsked;
  requirements: Requirements;
  use: ReadyFor;
  hard: boolean;
  /** civil date of the book */
  today: string;
  /** with the car's items projected to the end of the event, the way home included */
  analysis: Analysis;
  /** null: the road, today */
  event: KnownEvent | null;
};

export type KnownEvent = {
  id: string;
  event: EventInput;
  start: string;
  end: string;
  /** the last day for work: the eve, one day of buffer; today where it begins today */
  latest: string;
  /** on its own wheels, there and back */
  driven: boolean;
  /** km there and back on the road, 0 on a trailer; null: nobody said how far it is */
  wayKm: number | null;
  /** what it does there, all days together; null: nobody said */
  planned: Amounts | null;
};

/** Days between the work and the event, for what the work brings to light (common practice, no source). */
const BUFFER_DAYS = 1;

/**
 * Everything the rules need, worked out once: one run of the engine, or none for the road where its
 * answer is handed in.
 */
export function knownOf(
  car: CarAsked,
  asked: EventAsked,
  requirements: Requirements,
  analysis?: Analysis,
): Known {
  const { book } = car;
  const use: ReadyFor = asked === null ? 'road' : asked.event.sort;
  const common = { car, requirements, use, hard: isHardUse(use), today: book.asOf };
  if (asked === null) return { ...common, analysis: analysis ?? analyseBook(book), event: null };
  const event = eventOf(book, asked);
  return { ...common, analysis: analyseToTheEnd(book, event, plannedOf(book, asked)), event };
}

/** The event as attended; null where it says of no amount what is to be done. */
function plannedOf(book: Book, { id, event, planned }: NonNullable<EventAsked>) {
  const own = planned ?? plannedEventOf(id, event, book.car.id);
  return own && { ...own, attend: 1 };
}

function eventOf(book: Book, asked: NonNullable<EventAsked>): KnownEvent {
  const { id, event } = asked;
  const { start, end = start, travel } = event;
  const eve = addDays(start, -BUFFER_DAYS);
  const driven = travel?.trailered.includes(book.car.id) !== true;
  const far = travel?.distance === undefined ? null : distanceKm(travel.distance);
  return {
    id,
    event,
    start,
    end,
    latest: later(eve, book.asOf),
    driven,
    wayKm: driven ? far && 2 * far : 0,
    planned: amountsOf(plannedOf(book, asked)),
  };
}

function amountsOf(planned: PlannedEvent | null): Amounts | null {
  if (planned === null) return null;
  return deriveAmounts({
    useClass: planned.use,
    distanceKm: planned.km ?? null,
    hours: planned.hours ?? null,
    sessions: planned.sessions ?? null,
    launches: planned.launches ?? null,
  });
}

/**
 * The event is taken as attended, and so is the way there and back, as road. Of an event that says no
 * use only its days count.
 */
function analyseToTheEnd(book: Book, known: KnownEvent, planned: PlannedEvent | null): Analysis {
  const { id, start, end, wayKm } = known;
  const others = book.planned.filter((one) => one.id !== id);
  const way: PlannedEvent | null =
    wayKm === null || wayKm === 0
      ? null
      : { id: `${id}:way`, start, end, use: 'road', km: wayKm, attend: 1 };
  const asked = {
    ...book,
    planned: [...others, ...(planned ? [planned] : []), ...(way ? [way] : [])],
  };
  return analyseBook(
    asked,
    planned === null ? { toDays: [{ id, start, end }] } : { toEvents: [id] },
  );
}

const later = (a: string, b: string) => (a > b ? a : b);

/** How the use of the event counts. */
export function useClassOf({ event }: KnownEvent) {
  return USE_OF_SORT[event.sort];
}

/** How many days an event lasts. */
export function daysOf({ start, end }: KnownEvent): number {
  return daysBetween(start, end) + 1;
}
