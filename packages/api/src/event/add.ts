import { insertEvent, tellGarage } from '@quartermark/db';
import { eventInput } from '@quartermark/engine/log';
import { z } from 'zod';
import { commandFields, id } from '../asked.ts';
import { runCommand, type Writing } from '../command/run-command.ts';
import { refuse } from '../refused.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { checkCars } from './fields.ts';

export const addEventInput = z.strictObject({ ...commandFields, eventId: id, event: eventInput });

type AddEvent = z.output<typeof addEventInput>;

/** Puts an event on the garage's calendar. */
export function addEvent(world: World, asker: Asker, input: AddEvent): Promise<Written> {
  return runCommand(world, asker, 'event.add', input, async (writing) => {
    await writeEvent(writing, input);
    await tellGarage(writing.tx, writing.garage.id);
    return { id: input.eventId, revision: 1, version: 0 };
  });
}

/** The writing part, without telling anybody. */
export async function writeEvent(
  writing: Writing,
  { eventId, event }: Pick<AddEvent, 'eventId' | 'event'>,
): Promise<void> {
  const { tx, garage, now, by } = writing;
  await checkCars(writing, event);
  if (!(await insertEvent(tx, { garageId: garage.id, id: eventId, body: event, at: now, by })))
    throw refuse('idInUse', 'eventId', 'This event is on the calendar already; open it there.');
}
