import { randomUUID } from 'node:crypto';
import { insertDelivery, letterReaders, readPostShown, wakeWorker } from '@quartermark/db';
import { z } from 'zod';
import { commandFields } from '../asked.ts';
import { runCommand } from '../command/run-command.ts';
import { badField, notFoundHere } from '../refused.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { mustKeep, mustNotBeDemo } from './must-keep.ts';

export const postTestInput = z.strictObject(commandFields);

/** Sends a test letter to the asker's own mailbox, as soon as a worker takes it up. */
export function postTest(
  world: World,
  asker: Asker,
  input: z.output<typeof postTestInput>,
): Promise<Written> {
  return runCommand(world, asker, 'post.test', input, async ({ tx, garage, now, by, role }) => {
    mustNotBeDemo(garage);
    mustKeep(role);
    const [post, [reader]] = await Promise.all([
      readPostShown(tx, garage.id),
      letterReaders(tx, garage.id, by),
    ]);
    if (!reader) throw notFoundHere('garage', 'garageId');
    if (post?.mail == null)
      throw badField('mail', 'mail: the garage has no mail server yet; set one and save it first');
    const id = randomUUID();
    const host = post.mail.from.split('@')[1] ?? '';
    await insertDelivery(
      tx,
      {
        garageId: garage.id,
        id,
        kind: 'test',
        toAddress: reader.email,
        messageId: `<test.${id}@${host}>`,
        madeAt: now,
        madeBy: by,
      },
      now,
    );
    await wakeWorker(tx);
    return { id, revision: 1, version: 0 };
  });
}
