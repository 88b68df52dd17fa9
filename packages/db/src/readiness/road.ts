import { addDays } from '@quartermark/engine/calendar';
import { eventInput, type Requirements } from '@quartermark/engine/log';
import {
  type CarAsked,
  type DatedEvent,
  pastEventsOf,
  type SaidIn,
  usualRequirements,
} from '@quartermark/engine/readiness';
import type { Shelf } from '../books/shelf.ts';
import { UnreadableBook } from '../books/unreadable-book.ts';
import { listEventsOfCar } from '../events/read.ts';
import { workOutPieces } from '../gear/pieces.ts';
import { listGearOn } from '../gear/records.ts';
import { readRequirements, requirementsOf } from '../requirements/read.ts';

/** An event that ended so many days ago is no longer asked about. */
export const PAST_EVENT_DAYS = 60;

/** Everything that a car's answer rests on, readiness for the road included. */
export type RoadAsked = { car: CarAsked; requirements: Requirements };

/**
 * Reads a car with the parts on it, and what its garage asks for the road.
 *
 * @returns with the input version that it makes up
 * @param volume in which sentences give what is in bottles
 * @throws UnreadableBook if a stored body of the car no longer fits the schema
 * @throws Error if the car is not in the garage (any more)
 */
export async function loadRoad(
  shelf: Shelf,
  carId: string,
  volume: SaidIn['volume'],
): Promise<RoadAsked & { inputVersion: number }> {
  const { tx, garageId, asOf } = shelf;
  const since = addDays(asOf, -PAST_EVENT_DAYS);
  // sent down one connection without waiting in between
  const [found, on, events, asks] = await Promise.all([
    shelf.bookOf(carId),
    listGearOn(tx, garageId, carId, asOf),
    listEventsOfCar(tx, garageId, carId, since),
    readRequirements(tx, garageId, 'road'),
  ]);
  if (found === null)
    throw new Error(`could not load a book: car ${carId} is not in garage ${garageId}`);
  if ('problem' in found) throw found.problem;
  const { book, inputVersion } = found;
  const parts = await workOutPieces(shelf, on);
  const dated = events.map(({ id, body }) => datedEvent(carId, id, body));
  return {
    inputVersion,
    requirements: requirementsOf(asks) ?? usualRequirements('road'),
    car: {
      book,
      parts: parts.map(({ piece }) => piece),
      drivers: [],
      past: pastEventsOf(carId, dated, book.entries, asOf),
      acceptances: [],
      saidIn: { distance: book.car.unit, volume },
    },
  };
}

function datedEvent(carId: string, id: string, body: unknown): DatedEvent {
  const parsed = eventInput.safeParse(body);
  if (parsed.success) return { id, event: parsed.data };
  const [issue] = parsed.error.issues;
  const problem = `${issue?.path.map(String).join('.') ?? ''}: ${issue?.message ?? 'unreadable'}`;
  throw new UnreadableBook(carId, 'event', id, problem);
}
