import { carAsked, type Given, listItems, readEntries, readinessAt } from '@quartermark/db';
import { carProfile } from '@quartermark/engine/log';
import { inspectorFacts, takeAlong, usesOfEvent } from '@quartermark/engine/readiness';
import { entryViewsOf } from '../../entry/view-of.ts';
import type { EventCar } from '../../event-views.ts';
import { itemViewOf } from '../../item/view-of.ts';
import type { EntryView, EventView } from '../../views.ts';
import type { Room } from './room.ts';

/** One car of an event; null: it is not in the garage any more. */
export async function carOfEvent(
  room: Room,
  view: EventView,
  carId: string,
  given: Given,
): Promise<EventCar | null> {
  const { tx, garage, shelf } = room;
  const found = await shelf.bookOf(carId);
  if (found === null) return null;
  const { car } = found;
  const items = await listItems(tx, garage.id, { carId });
  const asked = await carAsked(room, view, carId, given);
  return {
    carId,
    name: car.name,
    unit: car.unit,
    // what a later schema faults is shown as it stands
    profile: carProfile.safeParse(car.profile).data ?? car.profile,
    readiness: asked && readinessAt(room, view, asked),
    take: asked && takeAlong(asked, { id: view.eventId, event: view.event }),
    facts: asked && inspectorFacts(asked),
    recorded: 'book' in found ? await recordedAt(room, view, found.book.entries) : [],
    items: items.map(itemViewOf),
  };
}

async function recordedAt(
  { tx, garage, events }: Room,
  { eventId, event }: EventView,
  entries: Parameters<typeof usesOfEvent>[1],
): Promise<EntryView[]> {
  const others = events.map(({ eventId: id, event: one }) => ({ id, event: one }));
  const uses = usesOfEvent({ id: eventId, event }, entries, others);
  if (uses.length === 0) return [];
  const rows = await readEntries(
    tx,
    garage.id,
    uses.map(({ id }) => id),
  );
  return entryViewsOf(tx, garage.id, rows);
}
