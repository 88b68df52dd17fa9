import { readEntry } from '@quartermark/db';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { notFoundHere } from '../refused.ts';
import type { EntryView } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { entryViewsOf } from './view-of.ts';

export const entryOneInput = z.strictObject({ garageId: id, entryId: id });

/** One entry as it stands; a removed one too, marked as such. */
export function entryOne(
  world: World,
  asker: Asker,
  { garageId, entryId }: z.output<typeof entryOneInput>,
): Promise<EntryView> {
  return inGarage(world, asker, garageId, async (tx) => {
    const row = await readEntry(tx, garageId, entryId);
    const [view] = row ? await entryViewsOf(tx, garageId, [row]) : [];
    if (!view) throw notFoundHere('entry', 'entryId');
    return view;
  });
}
