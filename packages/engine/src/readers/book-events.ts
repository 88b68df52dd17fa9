import { parseDay } from '../calendar/day-number.ts';
import type { Book, PlannedEvent } from '../log/book.ts';
import type { EventInput } from '../log/event.ts';
import type { EventSort } from '../log/event-sort.ts';
import type { UseClass } from '../log/item.ts';
import { carReadiness } from '../readiness/assess.ts';
import type { Margin, NeedStatus, Remedy, Verdict } from '../readiness/result.ts';
import { usualRequirements } from '../readiness/usual-requirements.ts';

/** An event of a file and what is asked of the car for it; dates are civil dates. */
export type EventDocument = {
  id: string;
  car: string;
  date: string;
  endDate: string;
  verdict: Verdict['word'];
  /** with `canBeReady`: the day on which all blocking work can be done */
  by: string | null;
  needs: {
    need: string;
    weight: 'blocking' | 'advice';
    status: NeedStatus;
    margin: Margin | null;
    reason: string;
    evidence: readonly string[];
    remedy: Remedy | null;
  }[];
};

const SORT: Readonly<Record<UseClass, EventSort>> = {
  road: 'meet',
  touring: 'roadTrip',
  circuit: 'circuit',
  strip: 'dragStrip',
  autocross: 'autocross',
};

/**
 * Readiness of a book's car for each of its events that are not over, by the usual requirements. A file
 * knows no parts, no drivers and no way there: what rests on them is not on record.
 */
export function bookEvents(book: Book): EventDocument[] {
  const { car, planned, asOf } = book;
  const today = parseDay(asOf);
  const saidIn = { distance: car.unit, volume: 'l' } as const;
  const asked = { book, parts: [], drivers: [], past: [], acceptances: [], saidIn };
  return planned
    .filter(({ start, end = start }) => parseDay(end) >= today)
    .sort(
      (a, b) =>
        compare(a.start, b.start) ||
        compare(a.end ?? a.start, b.end ?? b.start) ||
        compare(a.id, b.id),
    )
    .map((one) => {
      const event = eventOf(one, car.id);
      const { verdict, needs } = carReadiness(
        asked,
        { id: one.id, event, planned: one },
        usualRequirements(event.sort),
      );
      return {
        id: one.id,
        car: car.id,
        date: one.start,
        endDate: one.end ?? one.start,
        verdict: verdict.word,
        by: verdict.by,
        needs: needs.map(({ id, weight, status, margin, reason, evidence, remedy }) => ({
          need: id,
          weight,
          status,
          margin,
          reason,
          evidence,
          remedy,
        })),
      };
    });
}

function eventOf({ name, start, end, use, attend }: PlannedEvent, carId: string): EventInput {
  const sort = SORT[use];
  return {
    name: name ?? sort,
    sort,
    start,
    ...(end !== undefined && { end }),
    cars: [carId],
    attend,
  };
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
