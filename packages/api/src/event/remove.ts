import { removeEvent as removeRow } from '@quartermark/db';
import { z } from 'zod';
import { baseRevision, commandFields, id } from '../asked.ts';
import { raiseCars } from '../command/raise-cars.ts';
import { runCommand } from '../command/run-command.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { standingEvent } from './standing-event.ts';

export const removeEventInput = z.strictObject({ ...commandFields, eventId: id, baseRevision });

/** Takes an event off the calendar. */
export function removeEvent(
  world: World,
  asker: Asker,
  input: z.output<typeof removeEventInput>,
): Promise<Written> {
  return runCommand(world, asker, 'event.remove', input, async (writing) => {
    const { tx, garage, now, by } = writing;
    const { eventId, baseRevision } = input;
    const before = await standingEvent(writing, eventId, baseRevision);
    const change = { garageId: garage.id, id: eventId, baseRevision, at: now, by };
    const revision = await removeRow(tx, change);
    if (revision === null)
      throw new Error(`could not remove event ${eventId}: it changed in a locked garage`);
    return { id: eventId, revision, version: await raiseCars(writing, before.body.cars) };
  });
}
