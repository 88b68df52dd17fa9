import { insertTick, isCarOf, readEvent, readTick, tellGarage } from '@quartermark/db';
import { z } from 'zod';
import { commandFields, id } from '../asked.ts';
import { runCommand, type Writing } from '../command/run-command.ts';
import { notFoundHere, refuse } from '../refused.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';

export const tickEventInput = z.strictObject({
  ...commandFields,
  tickId: id,
  eventId: id,
  carId: id.nullable(),
  /** id of the line of work */
  line: z.string().trim().min(1).max(300),
  done: z.boolean(),
  /** by the device's clock, in UTC */
  madeAt: z.iso.datetime(),
});

type TickEvent = z.output<typeof tickEventInput>;

/**
 * Says that a line of an event's work is done, or that it is not. Nobody's tick is refused because of
 * somebody else's: all are kept, and the last one made decides. What waited for a signal counts also if
 * the event or the car was taken off the list meanwhile.
 */
export function tickEvent(world: World, asker: Asker, input: TickEvent): Promise<Written> {
  return runCommand(world, asker, 'event.tick', input, async (writing) => {
    const { tx, garage } = writing;
    const { eventId, carId, tickId } = input;
    if (!(await readEvent(tx, garage.id, eventId))) throw notFoundHere('event', 'eventId');
    if (carId !== null && !(await isCarOf(tx, garage.id, carId)))
      throw notFoundHere('car', 'carId');
    await writeTick(writing, input);
    await tellGarage(tx, garage.id);
    return { id: tickId, revision: 1, version: 0 };
  });
}

/** The same tick again, under another command, changes nothing. */
async function writeTick({ tx, garage, now, by }: Writing, input: TickEvent): Promise<void> {
  const { tickId: tick, eventId, carId, line, done } = input;
  const madeAt = new Date(input.madeAt);
  const row = { garageId: garage.id, id: tick, eventId, carId, line, done, madeAt, at: now, by };
  if (await insertTick(tx, row)) return;
  const there = await readTick(tx, garage.id, tick);
  const same =
    there?.eventId === eventId &&
    there.carId === carId &&
    there.line === line &&
    there.done === done &&
    there.madeAt.getTime() === madeAt.getTime();
  if (!same)
    throw refuse(
      'idInUse',
      'tickId',
      'This tick was made before and said something else; reload the page and tick it again.',
    );
}
