import { changeEvent as changeRow } from '@quartermark/db';
import { eventInput } from '@quartermark/engine/log';
import { z } from 'zod';
import { baseRevision, commandFields, id } from '../asked.ts';
import { raiseCars } from '../command/raise-cars.ts';
import { runCommand } from '../command/run-command.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { checkEvent } from './fields.ts';
import { standingEvent } from './standing-event.ts';

export const changeEventInput = z.strictObject({
  ...commandFields,
  eventId: id,
  baseRevision,
  event: eventInput,
});

/** Changes an event: its days, its place, the cars that go and what they do there. */
export function changeEvent(
  world: World,
  asker: Asker,
  input: z.output<typeof changeEventInput>,
): Promise<Written> {
  return runCommand(world, asker, 'event.change', input, async (writing) => {
    const { tx, garage, now, by } = writing;
    const { eventId, event, baseRevision } = input;
    const before = await standingEvent(writing, eventId, baseRevision);
    await checkEvent(writing, event);
    const change = { garageId: garage.id, id: eventId, baseRevision, at: now, by };
    const revision = await changeRow(tx, { ...change, body: event });
    if (revision === null)
      throw new Error(`could not change event ${eventId}: it changed in a locked garage`);
    const version = await raiseCars(writing, [...before.body.cars, ...event.cars]);
    return { id: eventId, revision, version };
  });
}
