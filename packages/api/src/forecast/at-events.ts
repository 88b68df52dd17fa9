import { complainTo, listEventsOfCar, readinessOfEvents } from '@quartermark/db';
import { eventOutlooks } from '@quartermark/engine/what-if';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import type { AtEventsView } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { bookNow } from './book-now.ts';

export const atEventsInput = z.strictObject({ garageId: id, carId: id });

/** Each event is a forecast of its own, so only those that come next are told. */
const EVENTS_MAX = 3;

/**
 * What the next events that name a car mean for it: what runs out before they are over, and of those that are
 * near how it stands. Nothing is written.
 */
export function atEvents(
  world: World,
  asker: Asker,
  { garageId, carId }: z.output<typeof atEventsInput>,
): Promise<AtEventsView> {
  return inGarage(
    world,
    asker,
    garageId,
    async (tx) => {
      const { book, row, garage, name } = await bookNow(world, tx, { garageId, carId });
      const rows = await listEventsOfCar(tx, garageId, carId, garage.today);
      const events = rows
        .slice(0, EVENTS_MAX)
        .map(({ id, startOn, endOn }) => ({ id, start: startOn, end: endOn }));
      const planned = new Set(book?.planned.map((event) => event.id));
      const going = book && (await readinessOfEvents(tx, row, garage.today, complainTo(world.log)));
      const near = (await going?.(carId)) ?? [];
      const verdicts = new Map(near.map(({ event, readiness }) => [event.id, readiness.verdict]));
      return {
        garage,
        carId,
        name,
        outlooks:
          book &&
          eventOutlooks(book, events).map((outlook) => ({
            ...outlook,
            withUse: planned.has(outlook.id),
            verdict: verdicts.get(outlook.id) ?? null,
          })),
      };
    },
    { isolation: 'repeatable read', readOnly: true },
  );
}
