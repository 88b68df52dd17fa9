import { todayIn } from '@quartermark/engine/calendar';
import type { Requirements } from '@quartermark/engine/log';
import {
  type CarAsked,
  type CarReadiness,
  carReadiness,
  type Piece,
  pastEventsOf,
  usualRequirements,
} from '@quartermark/engine/readiness';
import type { AcceptanceRow } from '../acceptances/read.ts';
import type { CalendarEvent, EventsRoom } from './events-room.ts';

/** Acceptances of an event with the names of those who gave them, by user id. */
export type Given = { acceptances: readonly AcceptanceRow[]; names: ReadonlyMap<string, string> };

export const SOMEBODY_GONE = 'somebody who has left';

/** What an event asks: its own, else the garage's for its sort, else the usual. */
export function askedAt({ asks }: EventsRoom, { event }: CalendarEvent): Requirements {
  return event.requirements ?? asks.get(event.sort) ?? usualRequirements(event.sort);
}

/** Everything known of a car that goes to an event; null: its book cannot be read, or it is not here. */
export async function carAsked(
  room: EventsRoom,
  { eventId, event }: Pick<CalendarEvent, 'eventId' | 'event'>,
  carId: string,
  given: Given,
): Promise<CarAsked | null> {
  const { shelf, row, today, events, pieces, complain } = room;
  const found = await shelf.bookOf(carId);
  if (found === null) return null;
  if ('problem' in found) {
    const problem = found.problem.message;
    complain({ garageId: row.id, carId, problem }, 'a book could not be read');
    return null;
  }
  const { book } = found;
  const on = pieces.filter(({ fitted }) => fitted?.car === carId);
  const crew = event.crew?.find(({ car }) => car === carId)?.people ?? [];
  const dated = events.map(({ eventId: id, event: one }) => ({ id, event: one }));
  return {
    book,
    parts: await allOf(
      room,
      on.map(({ row: { id } }) => id),
    ),
    drivers: await allOf(room, crew),
    past: pastEventsOf(carId, dated, book.entries, today).filter(({ id }) => id !== eventId),
    acceptances: given.acceptances
      .filter((one) => one.carId === carId)
      .map(({ id: acceptanceId, need, because, acceptedAt, acceptedBy }) => ({
        acceptanceId,
        need,
        because,
        by: given.names.get(acceptedBy) ?? SOMEBODY_GONE,
        on: todayIn(acceptedAt, row.zone),
      })),
    saidIn: { distance: book.car.unit, volume: row.volumeUnit },
  };
}

async function allOf({ pieceOf }: EventsRoom, ids: readonly string[]): Promise<Piece[]> {
  const found = await Promise.all(ids.map(pieceOf));
  return found.flatMap((piece) => piece ?? []);
}

/** How a car stands for an event, by what the event asks. */
export function readinessAt(room: EventsRoom, view: CalendarEvent, car: CarAsked): CarReadiness {
  return carReadiness(car, { id: view.eventId, event: view.event }, askedAt(room, view));
}
