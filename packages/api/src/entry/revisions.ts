import { listRevisions, namesOf } from '@quartermark/db';
import { z } from 'zod';
import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import { notFoundHere } from '../refused.ts';
import type { RevisionView } from '../views.ts';
import type { Asker, World } from '../world.ts';
import { bodyOf } from './body-of.ts';

export const entryRevisionsInput = z.strictObject({ garageId: id, entryId: id });

/** Everything an entry ever said, newest first, with who wrote it. */
export function entryRevisions(
  world: World,
  asker: Asker,
  { garageId, entryId }: z.output<typeof entryRevisionsInput>,
): Promise<RevisionView[]> {
  return inGarage(world, asker, garageId, async (tx) => {
    const rows = await listRevisions(tx, garageId, entryId);
    if (rows.length === 0) throw notFoundHere('entry', 'entryId');
    const names = await namesOf(
      tx,
      garageId,
      rows.map((row) => row.by),
    );
    return rows.map((row) => ({
      revision: row.revision,
      body: row.body === null ? null : bodyOf({ body: row.body }),
      at: row.at.toISOString(),
      by: names.get(row.by) ?? 'somebody who has left',
    }));
  });
}
