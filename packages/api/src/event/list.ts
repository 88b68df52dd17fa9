import {
  listEvents,
  listPeople,
  listPlannedLayUps,
  namesOfThings,
  readGarage,
} from '@quartermark/db';
import { addDays } from '@quartermark/engine/calendar';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { garageViewOf } from '../garage/view-of.ts';
import { plannedLayUpViewOf } from '../planned-lay-up/view-of.ts';
import { notFoundHere } from '../refused.ts';
import type { EventList } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { eventViewOf } from './view-of.ts';

export const eventListInput = z.strictObject({ garageId: id });

/** Events and planned lay-ups stay on the list for so many days after they ended. */
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
    const since = addDays(garage.today, -PAST_DAYS);
    const [rows, plans, people] = await Promise.all([
      listEvents(tx, garageId, since),
      listPlannedLayUps(tx, garageId, since),
      listPeople(tx, garageId),
    ]);
    const events = rows.map(eventViewOf);
    const plannedLayUps = plans.map(plannedLayUpViewOf);
    const carIds = [
      ...events.flatMap(({ event }) => event.cars),
      ...plannedLayUps.map(({ carId }) => carId),
    ];
    const cars = await namesOfThings(tx, garageId, carIds);
    return { garage, events, plannedLayUps, cars, people };
  });
}
