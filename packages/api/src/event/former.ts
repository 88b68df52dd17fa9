import { listEventsOver, readGarage } from '@quartermark/db';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import type { FormerEvents } from '../event-views.ts';
import { garageViewOf } from '../garage/view-of.ts';
import { notFoundHere } from '../refused.ts';
import type { Asker, World } from '../world.ts';
import { eventViewOf } from './view-of.ts';

export const formerEventsInput = z.strictObject({ garageId: id });

export const FORMER_MAX = 60;

/** Events that are over, the newest first: to be copied from. */
export function formerEvents(
  world: World,
  asker: Asker,
  { garageId }: z.output<typeof formerEventsInput>,
): Promise<FormerEvents> {
  return inGarage(world, asker, garageId, async (tx) => {
    const row = await readGarage(tx, garageId);
    if (!row) throw notFoundHere('garage', 'garageId');
    const { today } = garageViewOf(row, world.clock.now());
    const events = await listEventsOver(tx, garageId, today, FORMER_MAX);
    return { events: events.map(eventViewOf) };
  });
}
