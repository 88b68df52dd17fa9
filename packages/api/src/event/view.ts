import { readEvent } from '@quartermark/db';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import type { EventPage } from '../event-views.ts';
import { notFoundHere, refuse } from '../refused.ts';
import type { Asker, World } from '../world.ts';
import { eventPageOf } from './page/page-of.ts';
import { openRoom } from './page/room.ts';
import { eventViewOf } from './view-of.ts';

export const eventViewInput = z.strictObject({ garageId: id, eventId: id });

/**
 * An event with what is to be said of each car that goes, worked out now from what is recorded: nothing of
 * it is stored, so nothing can be out of date.
 */
export function eventView(
  world: World,
  asker: Asker,
  { garageId, eventId }: z.output<typeof eventViewInput>,
): Promise<EventPage> {
  return inGarage(
    world,
    asker,
    garageId,
    async (tx) => {
      const row = await readEvent(tx, garageId, eventId);
      if (!row) throw notFoundHere('event', 'eventId');
      if (row.removedAt)
        throw refuse('removed', 'eventId', 'This event was taken off the calendar.');
      const room = await openRoom(world, tx, garageId);
      if (!room) throw notFoundHere('event', 'eventId');
      return eventPageOf(room, eventViewOf(row));
    },
    { isolation: 'repeatable read', readOnly: true },
  );
}
