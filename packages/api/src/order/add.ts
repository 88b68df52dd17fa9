import { insertOrder, readItem } from '@quartermark/db';
import { orderInput } from '@quartermark/engine/log';
import { z } from 'zod';
import { commandFields, id } from '../asked.ts';
import { raiseOf } from '../command/raise-of.ts';
import { runCommand, type Writing } from '../command/run-command.ts';
import { notFoundHere, refuse } from '../refused.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { checkOrder } from './check-order.ts';

export const addOrderInput = z.strictObject({
  ...commandFields,
  itemId: id,
  orderId: id,
  order: orderInput,
});

type AddOrder = z.output<typeof addOrderInput>;

/** Says that the parts for an item were ordered. */
export function addOrder(world: World, asker: Asker, input: AddOrder): Promise<Written> {
  return runCommand(world, asker, 'order.add', input, async (writing) => {
    const { tx, garage } = writing;
    const item = await readItem(tx, garage.id, input.itemId);
    if (!item || item.removedAt) throw notFoundHere('service item', 'itemId');
    await writeOrder(writing, input);
    return { id: input.orderId, revision: 1, version: await raiseOf(writing, item) };
  });
}

/** The writing part, without raising anything. */
export async function writeOrder(
  writing: Writing,
  { itemId, orderId, order }: Pick<AddOrder, 'itemId' | 'orderId' | 'order'>,
): Promise<void> {
  const { tx, garage, now, by } = writing;
  checkOrder(writing, order);
  const row = { garageId: garage.id, id: orderId, itemId, body: order, at: now, by };
  if (!(await insertOrder(tx, row)))
    throw refuse('idInUse', 'orderId', 'This order is on record already; open it at its item.');
}
