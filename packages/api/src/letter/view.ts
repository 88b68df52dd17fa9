import { countUnread, mailStates, NOT_BY_MAIL, readGarage, readLetter } from '@quartermark/db';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { garageViewOf } from '../garage/view-of.ts';
import type { LetterView } from '../letter-views.ts';
import { notFoundHere } from '../refused.ts';
import type { Asker, World } from '../world.ts';

export const letterViewInput = z.strictObject({ garageId: id, letterId: id });

/** One letter of the asker's own, as it was composed. Reading it marks nothing. */
export function letterView(
  world: World,
  asker: Asker,
  { garageId, letterId }: z.output<typeof letterViewInput>,
): Promise<LetterView> {
  return inGarage(world, asker, garageId, async (tx) => {
    const [row, found, mails] = await Promise.all([
      readGarage(tx, garageId),
      readLetter(tx, { garageId, userId: asker.userId }, letterId),
      mailStates(tx, garageId, [letterId]),
    ]);
    if (!row) throw notFoundHere('garage', 'garageId');
    if (!found) throw notFoundHere('letter', 'letterId');
    const { date, body: letter, text, html, readAt, missed } = found;
    const garage = garageViewOf(row, world.clock.now());
    const mail = mails.get(letterId) ?? NOT_BY_MAIL;
    return { garage, date, letter, text, html, read: readAt !== null, mail, missed };
  });
}

export const letterUnreadInput = z.strictObject({ garageId: id });

/** How many of the asker's letters are not marked as read. */
export function letterUnread(
  world: World,
  asker: Asker,
  { garageId }: z.output<typeof letterUnreadInput>,
): Promise<{ count: number }> {
  return inGarage(world, asker, garageId, async (tx) => ({
    count: await countUnread(tx, { garageId, userId: asker.userId }),
  }));
}
