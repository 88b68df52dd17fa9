import { removeOrder as removeRow } from '@quartermark/db';
import { z } from 'zod';
import { baseRevision, commandFields, id } from '../asked.ts';
import { raiseOf } from '../command/raise-of.ts';
import { runCommand } from '../command/run-command.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { standingOrder } from './standing-order.ts';

export const removeOrderInput = z.strictObject({ ...commandFields, orderId: id, baseRevision });

/** Takes an order back: it was not made, or was called off. */
export function removeOrder(
  world: World,
  asker: Asker,
  input: z.output<typeof removeOrderInput>,
): Promise<Written> {
  return runCommand(world, asker, 'order.remove', input, async (writing) => {
    const { tx, garage, now, by } = writing;
    const { orderId, baseRevision } = input;
    const { item } = await standingOrder(writing, orderId, baseRevision);
    const change = { garageId: garage.id, id: orderId, baseRevision, at: now, by };
    const revision = await removeRow(tx, change);
    if (revision === null)
      throw new Error(`could not remove order ${orderId}: it changed in a locked garage`);
    return { id: orderId, revision, version: await raiseOf(writing, item) };
  });
}
