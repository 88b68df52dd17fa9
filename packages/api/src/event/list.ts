import { listEvents, namesOfThings, readGarage } from '@quartermark/db';
import { addDays } from '@quartermark/engine/calendar';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { garageViewOf } from '../garage/view-of.ts';
import { notFoundHere } from '../refused.ts';
import type { EventList } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { eventViewOf } from './view-of.ts';

export const eventListInput = z.strictObject({ garageId: id });

/** Events stay on the list for so many days after they ended. */
export const PAST_DAYS = 30;

/** What is on the garage's calendar, by date: what comes, and what was lately. */
export function eventList(
  world: World,
  asker: Asker,
  { garageId }: z.output<typeof eventListInput>,
): Promise<EventList> {
  return inGarage(world, asker, garageId, async (tx) => {
    const row = await readGarage(tx, garageId);
    if (!row) throw notFoundHere('garage', 'garageId');
    const garage = garageViewOf(row, world.clock.now());
    const rows = await listEvents(tx, garageId, addDays(garage.today, -PAST_DAYS));
    const events = rows.map(eventViewOf);
    const carIds = events.flatMap(({ event }) => event.cars);
    return { garage, events, cars: await namesOfThings(tx, garageId, carIds) };
  });
}
