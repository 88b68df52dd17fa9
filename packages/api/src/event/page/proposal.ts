import { entriesOf, listUsesAround } from '@quartermark/db';
import { type EventSort, eventDays } from '@quartermark/engine/log';
import { proposeUse, usesOfEvent } from '@quartermark/engine/readiness';
import type { UseProposal } from '../../event-views.ts';
import type { EventView } from '../../views.ts';
import type { Room } from './room.ts';

/** So many former events say what a car does at one of the sort. */
const FORMER_MAX = 12;

/** Events of a sort that are over, but for this one, the last at the end. */
export function overBefore({ events, garage }: Room, sort: EventSort, eventId: string) {
  return events
    .filter(
      (one) =>
        one.eventId !== eventId &&
        one.event.sort === sort &&
        (one.event.end ?? one.event.start) < garage.today,
    )
    .sort((a, b) => compare(a.event.end ?? a.event.start, b.event.end ?? b.event.start));
}

const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

/** What an event that says no use may ask of its first car; null: it says one, or nothing is usual. */
export async function proposalOf(
  room: Room,
  { eventId, event }: EventView,
): Promise<UseProposal | null> {
  const said = Object.values(event.use ?? {}).some((amount) => amount !== undefined);
  if (said) return null;
  const { tx, garage, events, shelf } = room;
  const former = overBefore(room, event.sort, eventId).slice(-FORMER_MAX);
  const ids = former.map((one) => one.eventId);
  const rows = ids.length === 0 ? [] : await listUsesAround(tx, garage.id, ids);
  const { entries } = entriesOf(rows);
  const dated = events.map((one) => ({ id: one.eventId, event: one.event }));
  const past = former.map((one) => {
    const at = { id: one.eventId, event: one.event };
    return { event: at, uses: usesOfEvent(at, entries, dated) };
  });
  const [carId] = event.cars;
  const first = carId === undefined ? null : await shelf.bookOf(carId);
  const unit = first?.car.unit ?? garage.distanceUnit;
  const proposed = proposeUse(event.sort, eventDays(event), unit, carId ?? '', past);
  return Object.keys(proposed.use).length === 0 ? null : proposed;
}
