import { listEntriesSince, listEvents, namesOfThings, readGarage } from '@quartermark/db';
import { addDays } from '@quartermark/engine/calendar';
import type { Entry } from '@quartermark/engine/log';
import { type DatedEvent, pastEventsOf } from '@quartermark/engine/readiness';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { garageViewOf } from '../garage/view-of.ts';
import { notFoundHere } from '../refused.ts';
import type { UnrecordedEvents } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { entryOf } from './entry-of.ts';
import { eventViewOf } from './view-of.ts';

export const unrecordedEventsInput = z.strictObject({ garageId: id });

/** No event that ended longer ago is asked about, and none is taken to have begun longer before. */
const LOOK_BACK_DAYS = 120;

/** What tells that a car was at an event, or that it stayed at home. */
const TELLING = ['drive', 'session', 'strip', 'answer'] as const;

/** Events that are over, with the cars they named of which nothing is on record; the last first. */
export function unrecordedEvents(
  world: World,
  asker: Asker,
  { garageId }: z.output<typeof unrecordedEventsInput>,
): Promise<UnrecordedEvents> {
  return inGarage(world, asker, garageId, async (tx) => {
    const row = await readGarage(tx, garageId);
    if (!row) throw notFoundHere('garage', 'garageId');
    const garage = garageViewOf(row, world.clock.now());
    const since = addDays(garage.today, -LOOK_BACK_DAYS);
    const events = (await listEvents(tx, garageId, since)).map(eventViewOf);
    const dated = events.map(({ eventId, event }) => ({ id: eventId, event }));
    const carIds = [...new Set(events.flatMap(({ event }) => event.cars))];
    const entries = (await listEntriesSince(tx, garageId, TELLING, since)).map(entryOf);
    const open = openCars(carIds, dated, entries, garage.today);
    const names = await namesOfThings(tx, garageId, carIds);
    const unrecorded = events
      .flatMap((view) => {
        const cars = (open.get(view.eventId) ?? []).flatMap((carId) => {
          const name = names[carId];
          return name === undefined ? [] : [{ carId, name }];
        });
        return cars.length === 0 ? [] : [{ ...view, cars }];
      })
      .toReversed();
    return { garage, events: unrecorded };
  });
}

function openCars(
  carIds: readonly string[],
  events: readonly DatedEvent[],
  entries: readonly Entry[],
  today: string,
): Map<string, string[]> {
  const open = new Map<string, string[]>();
  for (const carId of carIds)
    for (const past of pastEventsOf(carId, events, entries, today))
      if (!past.onRecord) open.set(past.id, [...(open.get(past.id) ?? []), carId]);
  return open;
}
