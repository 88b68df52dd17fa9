import { readEntries } from '@quartermark/db';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import type { EntryView } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { entryViewsOf } from './view-of.ts';

/** So many entries are asked for at once; a longer list is asked for in parts. */
export const ENTRIES_AT_ONCE = 100;

export const entrySomeInput = z.strictObject({
  garageId: id,
  entryIds: z.array(id).max(ENTRIES_AT_ONCE),
});

/** Entries by their ids, as a figure names those it rests on; by day. One that is not there is left out. */
export function entrySome(
  world: World,
  asker: Asker,
  { garageId, entryIds }: z.output<typeof entrySomeInput>,
): Promise<EntryView[]> {
  return inGarage(world, asker, garageId, async (tx) =>
    entryViewsOf(tx, garageId, await readEntries(tx, garageId, entryIds)),
  );
}
