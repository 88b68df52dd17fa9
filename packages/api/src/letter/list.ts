import { listLetters, mailStates, NOT_BY_MAIL, readGarage } from '@quartermark/db';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { readCursor, writeCursor } from '../cursor.ts';
import { garageViewOf } from '../garage/view-of.ts';
import type { LettersPage } from '../letter-views.ts';
import { pageFields } from '../page-fields.ts';
import { notFoundHere } from '../refused.ts';
import type { Asker, World } from '../world.ts';

export const letterListInput = z.strictObject({ garageId: id, ...pageFields });

const PAGE_LETTERS = 20;

/** The asker's own letters, the newest first. */
export function letterList(
  world: World,
  asker: Asker,
  { garageId, cursor }: z.output<typeof letterListInput>,
): Promise<LettersPage> {
  const after = cursor ? readCursor(z.iso.date(), cursor) : null;
  return inGarage(world, asker, garageId, async (tx) => {
    const row = await readGarage(tx, garageId);
    if (!row) throw notFoundHere('garage', 'garageId');
    const whose = { garageId, userId: asker.userId };
    const page = await listLetters(tx, whose, { after, limit: PAGE_LETTERS });
    const ids = page.letters.map(({ letterId }) => letterId);
    const mails = await mailStates(tx, garageId, ids);
    return {
      garage: garageViewOf(row, world.clock.now()),
      rows: page.letters.map((one) => ({ ...one, mail: mails.get(one.letterId) ?? NOT_BY_MAIL })),
      next: page.next && writeCursor(page.next),
    };
  });
}
