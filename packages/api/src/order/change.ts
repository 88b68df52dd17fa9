import { changeOrder as changeRow } from '@quartermark/db';
import { orderInput } from '@quartermark/engine/log';
import { z } from 'zod';
import { baseRevision, commandFields, id } from '../asked.ts';
import { raiseOf } from '../command/raise-of.ts';
import { runCommand } from '../command/run-command.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { checkOrder } from './check-order.ts';
import { standingOrder } from './standing-order.ts';

export const changeOrderInput = z.strictObject({
  ...commandFields,
  orderId: id,
  baseRevision,
  order: orderInput,
});

/** Changes an order: when it is expected, that it has come. */
export function changeOrder(
  world: World,
  asker: Asker,
  input: z.output<typeof changeOrderInput>,
): Promise<Written> {
  return runCommand(world, asker, 'order.change', input, async (writing) => {
    const { tx, garage, now, by } = writing;
    const { orderId, order, baseRevision } = input;
    const { item } = await standingOrder(writing, orderId, baseRevision);
    checkOrder(writing, order);
    const change = { garageId: garage.id, id: orderId, baseRevision, at: now, by };
    const revision = await changeRow(tx, { ...change, body: order });
    if (revision === null)
      throw new Error(`could not change order ${orderId}: it changed in a locked garage`);
    return { id: orderId, revision, version: await raiseOf(writing, item) };
  });
}
