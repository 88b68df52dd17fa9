import { addDays, daysBetween } from '@quartermark/engine/calendar';
import type { Distance, EventInput } from '@quartermark/engine/log';
import { type EventFields, eventFields } from './event-fields.ts';

/** A year to the same day of the week. */
const YEAR_DAYS = 364;

export type TakenOver = {
  fields: EventFields;
  /** cars it named that are no longer in the garage, or sold */
  left: string[];
  /** a year later is over as well: its days are for the person to choose */
  asksDays: boolean;
};

type Garage = {
  today: string;
  /** in which distances are proposed */
  unit: Distance['unit'];
  hasLeft: (carId: string) => boolean;
  /** whether somebody belongs to the garage */
  isHere: (personId: string) => boolean;
};

/**
 * A former event as a new one begins: a year later, on the same days of the week, with everything it said.
 * Cars and people that have left are left out. Days that are over as well are left empty.
 *
 * @example takeOver(event('2026-06-06'), garage).fields.start // "2027-06-05", both a Saturday
 */
export function takeOver(event: EventInput, garage: Garage): TakenOver {
  const { today, unit, hasLeft, isHere } = garage;
  const before = eventFields(event, 0, unit);
  const start = addDays(event.start, YEAR_DAYS);
  const asksDays = start < today;
  const end = addDays(start, daysBetween(event.start, event.end ?? event.start));
  const crew = Object.entries(before.crew).map(([car, people]) => [car, people.filter(isHere)]);
  return {
    fields: {
      ...before,
      start: asksDays ? '' : start,
      end: asksDays || end === start ? '' : end,
      cars: event.cars.filter((id) => !hasLeft(id)),
      crew: Object.fromEntries(crew),
    },
    left: event.cars.filter(hasLeft),
    asksDays,
  };
}
