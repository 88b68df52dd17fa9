import type { AcceptanceRow } from '@quartermark/db';
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
import type { EventView } from '../../views.ts';
import type { Room } from './room.ts';

/** Acceptances of an event with the names of those who gave them, by user id. */
export type Given = { acceptances: readonly AcceptanceRow[]; names: ReadonlyMap<string, string> };

export const SOMEBODY_GONE = 'somebody who has left';

/** What an event asks: its own, else the garage's for its sort, else the usual. */
export function askedAt({ asks }: Room, { event }: EventView): Requirements {
  return event.requirements ?? asks.get(event.sort) ?? usualRequirements(event.sort);
}

/** Everything known of a car that goes to an event; null: its book cannot be read, or it is not here. */
export async function carAsked(
  room: Room,
  { eventId, event }: EventView,
  carId: string,
  given: Given,
): Promise<CarAsked | null> {
  const { shelf, garage, events, pieces, world } = room;
  const found = await shelf.bookOf(carId);
  if (found === null) return null;
  if ('problem' in found) {
    const problem = found.problem.message;
    world.log.error({ garageId: garage.id, carId, problem }, 'a book could not be read');
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
      on.map(({ row }) => row.id),
    ),
    drivers: await allOf(room, crew),
    past: pastEventsOf(carId, dated, book.entries, garage.today).filter(({ id }) => id !== eventId),
    acceptances: given.acceptances
      .filter((one) => one.carId === carId)
      .map(({ id: acceptanceId, need, because, acceptedAt, acceptedBy }) => ({
        acceptanceId,
        need,
        because,
        by: given.names.get(acceptedBy) ?? SOMEBODY_GONE,
        on: todayIn(acceptedAt, garage.zone),
      })),
    saidIn: { distance: book.car.unit, volume: garage.volumeUnit },
  };
}

async function allOf({ pieceOf }: Room, ids: readonly string[]): Promise<Piece[]> {
  const found = await Promise.all(ids.map(pieceOf));
  return found.flatMap((piece) => piece ?? []);
}

export function readinessAt(room: Room, view: EventView, car: CarAsked): CarReadiness {
  return carReadiness(car, { id: view.eventId, event: view.event }, askedAt(room, view));
}
