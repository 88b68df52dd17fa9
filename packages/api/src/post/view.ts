import { readGarage, readPostShown } from '@quartermark/db';
import { SEND_MINUTE_USUAL } from '@quartermark/digest/hours';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { garageViewOf } from '../garage/view-of.ts';
import type { PostView } from '../letter-views.ts';
import { notFoundHere } from '../refused.ts';
import type { Asker, World } from '../world.ts';
import { mustKeep, mustNotBeDemo } from './must-keep.ts';

export const postViewInput = z.strictObject({ garageId: id });

/** The garage's hour, mail server and webhook, without their secrets. */
export function postView(
  world: World,
  asker: Asker,
  { garageId }: z.output<typeof postViewInput>,
): Promise<PostView> {
  return inGarage(world, asker, garageId, async (tx, role) => {
    const row = await readGarage(tx, garageId);
    if (!row) throw notFoundHere('garage', 'garageId');
    mustNotBeDemo(row);
    mustKeep(role);
    const post = await readPostShown(tx, garageId);
    return {
      garage: garageViewOf(row, world.clock.now()),
      sendMinute: post?.sendMinute ?? SEND_MINUTE_USUAL,
      mail: post?.mail ?? null,
      hasPassword: post?.hasPassword ?? false,
      hookUrl: post?.hookUrl ?? null,
      revision: post?.revision ?? 0,
    };
  });
}
