import { insertEvent } from '@quartermark/db';
import { eventInput } from '@quartermark/engine/log';
import { z } from 'zod';
import { commandFields, id } from '../asked.ts';
import { raiseCars } from '../command/raise-cars.ts';
import { runCommand, type Writing } from '../command/run-command.ts';
import { refuse } from '../refused.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { checkEvent } from './fields.ts';

export const addEventInput = z.strictObject({ ...commandFields, eventId: id, event: eventInput });

type AddEvent = z.output<typeof addEventInput>;

/** Puts an event on the garage's calendar; the cars it names count it ahead. */
export function addEvent(world: World, asker: Asker, input: AddEvent): Promise<Written> {
  return runCommand(world, asker, 'event.add', input, async (writing) => {
    await writeEvent(writing, input);
    const version = await raiseCars(writing, input.event.cars);
    return { id: input.eventId, revision: 1, version };
  });
}

/** The writing part, without telling anybody or raising anything. */
export async function writeEvent(
  writing: Writing,
  { eventId, event }: Pick<AddEvent, 'eventId' | 'event'>,
): Promise<void> {
  const { tx, garage, now, by } = writing;
  await checkEvent(writing, event);
  if (!(await insertEvent(tx, { garageId: garage.id, id: eventId, body: event, at: now, by })))
    throw refuse('idInUse', 'eventId', 'This event is on the calendar already; open it there.');
}
