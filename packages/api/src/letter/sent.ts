import { listDeliveries, readGarage } from '@quartermark/db';
import { todayIn } from '@quartermark/engine/calendar';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { readCursor, writeCursor } from '../cursor.ts';
import { garageViewOf } from '../garage/view-of.ts';
import type { SentPage } from '../letter-views.ts';
import { pageFields } from '../page-fields.ts';
import { mustKeep } from '../post/must-keep.ts';
import { notFoundHere } from '../refused.ts';
import type { Asker, World } from '../world.ts';

export const letterSentInput = z.strictObject({ garageId: id, ...pageFields });

const PAGE_DELIVERIES = 30;

/** What left the garage, to whom and how that ended, the newest first; for those who run the garage. */
export function letterSent(
  world: World,
  asker: Asker,
  { garageId, cursor }: z.output<typeof letterSentInput>,
): Promise<SentPage> {
  const after = cursor ? readCursor(id, cursor) : null;
  return inGarage(world, asker, garageId, async (tx, role) => {
    mustKeep(role);
    const row = await readGarage(tx, garageId);
    if (!row) throw notFoundHere('garage', 'garageId');
    const page = await listDeliveries(tx, garageId, { after, limit: PAGE_DELIVERIES });
    return {
      garage: garageViewOf(row, world.clock.now()),
      rows: page.deliveries.map(({ deliveryId, kind, name, date, madeAt, mail }) => ({
        deliveryId,
        kind,
        whom: name,
        date: date ?? todayIn(Date.parse(madeAt), row.zone),
        mail,
      })),
      next: page.next && writeCursor(page.next),
    };
  });
}
